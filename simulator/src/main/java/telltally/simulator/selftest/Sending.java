package telltally.simulator.selftest;

import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.selftest.BenchEvent.Kind;

/** Codes are being sent, once as the format repeats them. In a format with segments, interrupting erases what is stored. */
final class Sending extends Stage {
    /** How long the output rests after the last flash before an act counts as made after all codes are out. */
    static final long REST_NANOS = 2 * SECOND;

    private final Transmission sent;
    private final Next next;

    /** What comes after sending; made when it comes. */
    interface Next {
        Stage at(long nanos);
    }

    private Sending(long sinceNanos, Transmission sent, Next next) {
        super(sinceNanos);
        this.sent = sent;
        this.next = next;
    }

    /** @param first the segment whose codes come first */
    static Sending begin(Controller controller, Transmission sent, Segment first, Next next) {
        controller.event(Kind.CODES_BEGIN, first.key());
        controller.output().begin(sent, first);
        return new Sending(controller.nowNanos(), sent, next);
    }

    @Override
    long untilNanos() {
        return sinceNanos() + sent.lamp().endNanos();
    }

    @Override
    void elapsed(Controller controller) {
        controller.event(Kind.CODES_OUT, "");
        controller.enter(next.at(controller.nowNanos()));
    }

    @Override
    void paint(OutputLine output, Controller controller, long untilNanos) {
        output.play(untilNanos);
    }

    @Override
    void jumperOut(Controller controller) {
        interrupted(controller);
        controller.returnToIdle();
    }

    @Override
    void interrupted(Controller controller) {
        if (controller.segmented()) {
            controller.eraseByInterruption();
        }
    }
}
