package telltally.decoder.card.run;

import java.nio.charset.StandardCharsets;
import telltally.decoder.card.CardJson;
import telltally.decoder.card.Cards;
import telltally.decoder.card.Part;
import telltally.simulator.document.ProblemException;

/** Prints a score card in a Java machine of its own. */
final class CardsElsewhere {
    private CardsElsewhere() {}

    public static void main(String[] args) throws ProblemException {
        byte[] card = CardJson.text(Cards.forgetful(Part.WHOLE, 2)).getBytes(StandardCharsets.UTF_8);
        System.out.write(card, 0, card.length);
        System.out.flush();
    }
}
