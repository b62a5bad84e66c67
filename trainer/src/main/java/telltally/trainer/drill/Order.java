package telltally.trainer.drill;

import java.util.List;
import java.util.Optional;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.scenario.Display;

/** What drill is to be made, and the chance that belongs to it. */
record Order(Skill skill, Level level, String item, long seed) {
    private static final long MILLISECOND = 1_000_000L;
    private static final long SHORTEST_TAIL_NANOS = 2_500_000_000L;

    /** A stream of this drill's own, the same for every level, so that the levels of one seed are comparable. */
    Chance chance(String name) {
        return Chance.of(seed).stream("drill/" + skill + "/" + name);
    }

    Ease ease() {
        return new Ease(level);
    }

    /**
     * Nobody can know when the first flash comes; afterwards the dark is longer than any gap before it.
     *
     * @param longestGapNanos the longest gap that is sent
     */
    Pacing pacing(long longestGapNanos, int loops) {
        long leadNanos = (1_500 + chance("lead").below(2_000)) * MILLISECOND;
        return new Pacing(leadNanos, Math.max(SHORTEST_TAIL_NANOS, 3 * longestGapNanos / 2), loops);
    }

    /** One list in a format without segments. */
    Tape list(FlashFormat format, List<String> codes, int loops) {
        FlashFormat.Gaps gaps = format.gaps();
        boolean single = codes.size() == 1
                && loops == 1
                && format.repeats().listTimes() == 1
                && format.repeats().eachCodeTimes() == 1;
        long longestGapNanos =
                single ? gaps.betweenDigitsNanos() : Math.max(gaps.betweenCodesNanos(), gaps.beforeRepeatNanos());
        return Tape.of(new Encoder(format).encode(new Message.Codes(codes), pacing(longestGapNanos, loops)));
    }

    /** One of several, by the seed alone. */
    <T> T oneOf(String stream, List<T> several) {
        return several.get(chance(stream).below(several.size()));
    }

    /** The drill, seen on a lamp without anything in between. */
    Drill drill(FlashFormat format, Tape tape, Question question) {
        return new Drill(
                skill,
                level,
                item,
                seed,
                format,
                tape.truth(format),
                tape.pulses(),
                Display.LAMP,
                Observer.usual(),
                question,
                Optional.empty());
    }

    Said task() {
        return Said.of("drill.task-" + skill.key());
    }

    Credit credit(boolean right) {
        return new Credit(skill, level, item, right);
    }

    /** Something that has to do with counting a digit. */
    Credit digit(int flashes, boolean right) {
        return new Credit(Skill.COUNT_A_DIGIT, level, Integer.toString(flashes), right);
    }
}
