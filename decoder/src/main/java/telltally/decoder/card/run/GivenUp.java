package telltally.decoder.card.run;

import telltally.decoder.score.Entrant;
import telltally.decoder.score.FailingReader;
import telltally.decoder.score.Outcome;

/**
 * A decoder that is not asked any more.
 *
 * @param why what it says of every session
 */
record GivenUp(Entrant entrant, Outcome.Failed why) implements Entrant {
    @Override
    public String id() {
        return entrant.id();
    }

    @Override
    public Traits traits() {
        return entrant.traits();
    }

    @Override
    public Reader open() {
        return new FailingReader(why);
    }
}
