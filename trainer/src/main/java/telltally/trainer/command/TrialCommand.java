package telltally.trainer.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.trial.Estimate;
import telltally.trainer.trial.OrderOutcome;
import telltally.trainer.trial.Sensitivity;
import telltally.trainer.trial.Trial;
import telltally.trainer.trial.TrialOutcome;

/** The tutor against simpler orders of practice, on simulated learners. */
@Command(
        name = "trial",
        mixinStandardHelpOptions = true,
        description = "Compares the tutor with simpler orders of practice on simulated learners.",
        footer = {
            "",
            "Lamp time in minutes until every skill is truly mastered (minutes_to_mastery), and until that is shown",
            "by passing every one as well (minutes_to_shown_mastery). The learners are simulated: nothing here is a",
            "claim about people. Intervals are 95 % bootstrap intervals over learners."
        })
final class TrialCommand implements Callable<Integer> {
    private static final List<Double> CURVE = List.of(0.15, 0.2, 0.3, 0.4, 0.5, 0.7, 0.85, 1.0);

    private final Streams streams;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--learners", paramLabel = "N", description = "How many (default: ${DEFAULT-VALUE}).")
    private int learners = 1000;

    @Option(names = "--seed", paramLabel = "S", description = "Of all chance (default: ${DEFAULT-VALUE}).")
    private long seed = 1;

    @Option(
            names = "--phi",
            paramLabel = "P",
            description = "What a hopelessly hard drill teaches, as a share of the best difficulty; 1: difficulty does"
                    + " not matter (default: ${DEFAULT-VALUE}).")
    private double phi = 0.3;

    @Option(names = "--curve", description = "Over phi from 0.15 to 1 instead of one phi.")
    private boolean curve;

    @Option(names = "--sensitivity", description = "Also with each assumed value halved and doubled.")
    private boolean sensitivity;

    @Option(names = "--json", description = "As JSON; one line for each phi and each change of assumptions.")
    private boolean json;

    TrialCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public Integer call() {
        if (learners < 1 || learners > 1_000_000) {
            throw new ParameterException(spec.commandLine(), "--learners: " + learners + " is not 1 to 1000000");
        }
        if (!(phi >= 0 && phi <= 1)) {
            throw new ParameterException(spec.commandLine(), "--phi: " + phi + " is not 0 to 1");
        }
        Trial trial = new Trial(DrillMaker.shipped(), seed);
        for (double each : curve ? CURVE : List.of(phi)) {
            List<Sensitivity.Variation> all = Sensitivity.variations(each);
            for (Sensitivity.Variation variation : sensitivity ? all : all.subList(0, 1)) {
                tried(trial, variation);
            }
        }
        return ExitStatus.DONE;
    }

    /** Under some assumptions nobody could ever master the path; that is a result too, and the others go on. */
    private void tried(Trial trial, Sensitivity.Variation variation) {
        try {
            show(variation, trial.run(learners, variation.assumed()));
        } catch (IllegalArgumentException outOfReach) {
            streams.error("telltally trial: assumptions " + variation.name() + ": " + outOfReach.getMessage());
        }
    }

    private void show(Sensitivity.Variation variation, TrialOutcome outcome) {
        if (json) {
            streams.line(TrialJson.of(variation.name(), outcome));
        } else {
            text(variation, outcome).forEach(streams::line);
        }
        streams.out().flush();
    }

    private static List<String> text(Sensitivity.Variation variation, TrialOutcome outcome) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT,
                "phi %.2f, assumptions %s: %d simulated learners (%d more could never master the path)",
                outcome.phi(),
                variation.name(),
                outcome.learners(),
                outcome.outOfReach()));
        lines.add(row(
                "", "mastered, min", "tutor saves, %", "shown, min", "tutor saves, %", "false passes, %", "day 30, %"));
        for (OrderOutcome order : outcome.orders()) {
            lines.add(row(
                    order.id(),
                    told(order.minutesToMastery(), 1),
                    told(order.saved(), 100),
                    told(order.minutesToShown(), 1),
                    told(order.savedShown(), 100),
                    told(order.falsePasses(), 100),
                    told(order.retained(), 100)));
        }
        return lines;
    }

    private static String row(Object... cells) {
        return String.format(Locale.ROOT, "  %-11s  %-25s  %-19s  %-25s  %-19s  %-15s  %s", cells);
    }

    private static String told(Estimate estimate, double unit) {
        return String.format(
                Locale.ROOT,
                "%.1f (%.1f to %.1f)",
                unit * estimate.value(),
                unit * estimate.low(),
                unit * estimate.high());
    }
}
