package telltally.simulator.selftest;

import java.util.List;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.Transmission;
import telltally.simulator.selftest.BenchEvent.Kind;

/** A list goes on and on until the jumper is pulled or the key turned off. Nothing is erased by that. */
final class Looping extends Stage {
    /** A fast list before the slow one grows with it, so that it has to be of one length from the start. */
    private static final int LOOPS_AFTER_A_BURST = 100;

    private final List<String> codes;
    private int loops;
    private Transmission sent;

    private Looping(Controller controller, List<String> codes, int loops) {
        super(controller.nowNanos());
        this.codes = codes;
        this.loops = loops;
        this.sent = encoded(controller);
    }

    static Looping begin(Controller controller, List<String> codes) {
        boolean burst = controller.setup().format().burst().isPresent();
        Looping looping = new Looping(controller, codes, burst ? LOOPS_AFTER_A_BURST : 2);
        controller.event(Kind.CODES_BEGIN, Segment.CODES.key());
        controller.output().begin(looping.sent, Segment.CODES);
        return looping;
    }

    private Transmission encoded(Controller controller) {
        return controller.encoder().encode(new Message.Codes(codes), new Pacing(SECOND, Sending.REST_NANOS, loops));
    }

    /** So far a recording of twice as many loops is the same: up to the last code, or the last blink of no codes. */
    @Override
    long untilNanos() {
        if (loops == LOOPS_AFTER_A_BURST) {
            return NEVER;
        }
        GroupKind repeated = codes.isEmpty() ? GroupKind.STEADY : GroupKind.CODE;
        List<SentGroup> groups = sent.groups();
        for (int i = groups.size() - 1; i >= 0; i--) {
            if (groups.get(i).kind() == repeated) {
                return sinceNanos() + groups.get(i).endNanos();
            }
        }
        return NEVER;
    }

    @Override
    void elapsed(Controller controller) {
        loops = 2 * loops;
        sent = encoded(controller);
        controller.output().goOnWith(sent);
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.play(untilNanos);
    }

    @Override
    void jumperOut(Controller controller) {
        controller.returnToIdle();
    }
}
