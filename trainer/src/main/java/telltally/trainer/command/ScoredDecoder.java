package telltally.trainer.command;

import telltally.decoder.outside.InstalledDecoders;
import telltally.decoder.outside.Limits;
import telltally.decoder.outside.OutsideDecoder;
import telltally.decoder.score.Entrant;
import telltally.decoder.score.Outcome;
import telltally.simulator.document.Problem;
import telltally.simulator.document.ProblemException;

/** The decoder that the command line asks for: in Java by its id, or any program by its command. */
final class ScoredDecoder {
    private ScoredDecoder() {}

    /** @throws ProblemException if nothing is called so */
    static Entrant named(String id) throws ProblemException {
        InstalledDecoders installed = InstalledDecoders.find();
        return installed
                .find(id)
                .orElseThrow(() -> new ProblemException(Problem.of(
                        "--decoder",
                        "nothing is called " + Problem.quoted(id) + "; expected "
                                + String.join(" or ", installed.ids()))));
    }

    /** A program that cannot be spoken to is scored all the same, as one that never answers; its user is told why. */
    static Entrant program(String command, Limits limits, Streams streams) {
        OutsideDecoder decoder = OutsideDecoder.command(command).within(limits);
        decoder.refusal().ifPresent(why -> streams.error("--run: " + why.detail() + hint(why.failure())));
        return decoder;
    }

    /** What it mostly is. */
    private static String hint(Outcome.Failure failure) {
        return failure == Outcome.Failure.HUNG ? "; each line of its output has to be flushed" : "";
    }
}
