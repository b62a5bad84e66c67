package telltally.trainer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import telltally.decoder.card.ScoreCard;
import telltally.decoder.card.SetCard;
import telltally.decoder.score.FloorRaise;
import telltally.decoder.score.Score;
import telltally.decoder.score.SeedLibrary;
import telltally.decoder.score.SeedLibrary.SeedFile;
import telltally.simulator.document.ProblemException;

/** Raises the floors of many seed sets to what a card reached. A set without floors for the decoder is left alone. */
final class FloorRaises {
    private final List<Path> places;

    /** @param places files and folders of seed sets */
    FloorRaises(List<Path> places) {
        this.places = List.copyOf(places);
    }

    /** What rose, a line each. */
    List<String> raise(ScoreCard card) throws ProblemException {
        List<String> rises = new ArrayList<>();
        for (SeedFile each : SeedLibrary.read(places)) {
            for (SetCard set : card.sets()) {
                boolean same = set.title().id().equals(each.set().id());
                if (same && each.set().floors().own(card.decoder()).isPresent()) {
                    List<Score> reached = set.lines().stream()
                            .map(line -> line.decoder().counts().score())
                            .toList();
                    new FloorRaise(each.file())
                            .raise(card.decoder(), reached)
                            .forEach(rise -> rises.add(each.file() + ": " + rise));
                }
            }
        }
        return rises;
    }
}
