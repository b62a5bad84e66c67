package telltally.simulator.selftest;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.format.Segment;
import telltally.simulator.format.Transmission;
import telltally.simulator.selftest.BenchEvent.Kind;
import telltally.simulator.vehicle.BalanceJudge;
import telltally.simulator.vehicle.BalancePlan;
import telltally.simulator.vehicle.BalanceVerdict;
import telltally.simulator.vehicle.CylinderBalance;
import telltally.simulator.vehicle.Phase;

/** The stages of the self-test, in the order of the procedure. Times are common practice, no source. */
final class Stages {
    private static final long SECOND = 1_000_000_000L;
    private static final long BULB_CHECK_NANOS = 2 * SECOND;
    private static final long ENGINE_OFF_TEST_NANOS = 5 * SECOND;
    private static final long LOOK_EVERY_NANOS = SECOND;
    private static final long STARTING_NANOS = 2 * SECOND;
    private static final long BEFORE_CYLINDER_FLASHES_NANOS = 3 * SECOND;
    private static final long PROMPT_WAIT_NANOS = 15 * SECOND;
    private static final double RUNNING_TEST_RPM = 1600;
    private static final double AFTER_TEST_RPM = 1000;
    private static final double FLOOR_SHARE = 0.9;
    private static final double PRESSED_SHARE = 0.15;

    /** How long the output rests after the last flash before the next act counts as made after all codes are out. */
    private static final long AFTER_CODES_NANOS = 2 * SECOND;

    /** More than anybody waits for: a loop ends with the key. */
    private static final int ENDLESS_LOOPS = 200;

    private Stages() {}

    /** The key is off. */
    static final class Off extends Stage {
        Off(long sinceNanos) {
            super(sinceNanos);
        }
    }

    /** The key is on and the supply too low for the controller. */
    static final class Dead extends Stage {
        Dead(long sinceNanos) {
            super(sinceNanos);
        }
    }

    /** The lamp is lit to show that it can be. */
    static final class BulbCheck extends Stage {
        BulbCheck(long sinceNanos) {
            super(sinceNanos);
        }

        @Override
        long untilNanos() {
            return sinceNanos() + BULB_CHECK_NANOS;
        }

        @Override
        void elapsed(Controller controller) {
            controller.enter(
                    controller.jumper() ? EngineOffTest.begin(controller) : new Waiting(controller.nowNanos()));
        }

        @Override
        void paint(OutputLine output, Controller controller, long untilNanos) {
            output.hold(true, untilNanos);
        }
    }

    /** The key is on, the engine off, and no test runs. */
    static final class Waiting extends Stage {
        Waiting(long sinceNanos) {
            super(sinceNanos);
        }

        @Override
        void jumperIn(Controller controller) {
            controller.enter(EngineOffTest.begin(controller));
        }
    }

    /** The controller looks at its circuits and lets every solenoid click. */
    static final class EngineOffTest extends Stage {
        private final Set<String> codes = new LinkedHashSet<>();
        private int looks;

        private EngineOffTest(long sinceNanos) {
            super(sinceNanos);
        }

        static EngineOffTest begin(Controller controller) {
            controller.event(Kind.TEST_BEGINS, "engine-off");
            controller.movingSolenoids().forEach(name -> controller.event(Kind.SOLENOID_CLICKS, name));
            return new EngineOffTest(controller.nowNanos());
        }

        @Override
        long untilNanos() {
            return sinceNanos() + looks * LOOK_EVERY_NANOS;
        }

        @Override
        void elapsed(Controller controller) {
            codes.addAll(
                    controller.codesNow(controller.segmented() ? Segment.PRESENT : Segment.CODES, Phase.ENGINE_OFF));
            looks++;
            if (untilNanos() > sinceNanos() + ENGINE_OFF_TEST_NANOS) {
                controller.enter(controller.segmented() ? keyOnCodes(controller) : loop(controller));
            }
        }

        @Override
        void jumperOut(Controller controller) {
            controller.enter(new Waiting(controller.nowNanos()));
        }

        private Stage keyOnCodes(Controller controller) {
            Message message = new Message.KeyOn(inListOrder(controller, codes), controller.storedCodes());
            Transmission sent = controller.encoder().encode(message, new Pacing(SECOND, AFTER_CODES_NANOS, 1));
            return Sending.of(controller, sent, Segment.PRESENT, OutputCheck::new);
        }

        private Stage loop(Controller controller) {
            Set<String> all = new LinkedHashSet<>(codes);
            all.addAll(controller.storedCodes());
            List<String> list = inListOrder(controller, all);
            int most =
                    Math.min(list.size(), controller.setup().format().repeats().mostCodes());
            Transmission sent = controller
                    .encoder()
                    .encode(
                            new Message.Codes(list.subList(0, most)),
                            new Pacing(SECOND, AFTER_CODES_NANOS, ENDLESS_LOOPS));
            return Sending.of(controller, sent, Segment.CODES, OutputCheck::new);
        }
    }

    private static List<String> inListOrder(Controller controller, Set<String> codes) {
        return controller.setup().codeList().meanings().keySet().stream()
                .filter(codes::contains)
                .toList();
    }

    /** What comes after sending; made when it comes. */
    interface Next {
        Stage at(long nanos);
    }

    /** Codes are being sent. To interrupt this erases what is stored. */
    static final class Sending extends Stage {
        private final Transmission sent;
        private final Next next;

        private Sending(long sinceNanos, Transmission sent, Next next) {
            super(sinceNanos);
            this.sent = sent;
            this.next = next;
        }

        static Sending of(Controller controller, Transmission sent, Segment segment, Next next) {
            controller.event(Kind.CODES_BEGIN, segment.key());
            sent.codes().keySet().forEach(controller.output()::codesBegin);
            return new Sending(controller.nowNanos(), sent, next);
        }

        @Override
        long untilNanos() {
            return sinceNanos() + sent.lamp().endNanos();
        }

        @Override
        void elapsed(Controller controller) {
            controller.output().sent(sent, sinceNanos(), controller.nowNanos());
            controller.event(Kind.CODES_OUT, "");
            controller.enter(next.at(controller.nowNanos()));
        }

        @Override
        void paint(OutputLine output, Controller controller, long untilNanos) {
            output.play(sent, sinceNanos(), untilNanos);
        }

        @Override
        void jumperOut(Controller controller) {
            interrupted(controller);
            controller.enter(
                    controller.engineBay().running()
                            ? new Idling(controller.nowNanos())
                            : new Waiting(controller.nowNanos()));
        }

        @Override
        void interrupted(Controller controller) {
            controller.output().sent(sent, sinceNanos(), controller.nowNanos());
            // A loop never gets to its end; the format has no way of erasing by interruption, or the key would.
            if (controller.segmented()) {
                controller.eraseByInterruption();
            }
        }
    }

    /**
     * All engine-off codes are out. The throttle to the floor switches every output on and off; a circuit that opens
     * while it is moved lights the lamp.
     */
    static final class OutputCheck extends Stage {
        private boolean outputsOn;

        OutputCheck(long sinceNanos) {
            super(sinceNanos);
        }

        @Override
        void throttle(Controller controller, double fromShare, double toShare) {
            if (fromShare < FLOOR_SHARE && toShare >= FLOOR_SHARE && controller.segmented()) {
                outputsOn = !outputsOn;
                controller.event(outputsOn ? Kind.OUTPUTS_ON : Kind.OUTPUTS_OFF, "");
                controller.movingSolenoids().forEach(name -> controller.event(Kind.SOLENOID_CLICKS, name));
            }
        }

        @Override
        void paint(OutputLine output, Controller controller, long untilNanos) {
            output.hold(outputsOn || controller.intermittentShows(), untilNanos);
        }

        @Override
        void jumperOut(Controller controller) {
            controller.enter(new Waiting(controller.nowNanos()));
        }

        @Override
        boolean wiggleCheck() {
            return true;
        }
    }

    /** The starter turns and the engine comes up. */
    static final class Starting extends Stage {
        Starting(long sinceNanos) {
            super(sinceNanos);
        }

        @Override
        long untilNanos() {
            return sinceNanos() + STARTING_NANOS;
        }

        @Override
        void elapsed(Controller controller) {
            controller.enter(
                    controller.jumper() && controller.segmented()
                            ? CylinderFlashes.begin(controller)
                            : new Idling(controller.nowNanos()));
        }
    }

    /** The engine runs and no test does. */
    static final class Idling extends Stage {
        Idling(long sinceNanos) {
            super(sinceNanos);
        }

        @Override
        void jumperIn(Controller controller) {
            if (controller.segmented()) {
                controller.enter(CylinderFlashes.begin(controller));
            }
        }
    }

    /** The running test opens with half the number of cylinders. */
    static final class CylinderFlashes extends Stage {
        private final Transmission sent;

        private CylinderFlashes(long sinceNanos, Transmission sent) {
            super(sinceNanos);
            this.sent = sent;
        }

        static CylinderFlashes begin(Controller controller) {
            controller.event(Kind.TEST_BEGINS, "engine-running");
            int half = controller.setup().vehicle().cylinders().count() / 2;
            Transmission sent = controller
                    .encoder()
                    .encodeCount(
                            GroupKind.CYLINDERS,
                            Segment.RUNNING,
                            half,
                            new Pacing(BEFORE_CYLINDER_FLASHES_NANOS, SECOND, 1));
            return new CylinderFlashes(controller.nowNanos(), sent);
        }

        @Override
        long untilNanos() {
            return sinceNanos() + sent.lamp().endNanos();
        }

        @Override
        void elapsed(Controller controller) {
            controller.output().sent(sent, sinceNanos(), controller.nowNanos());
            controller.engineBay().holdSpeed(RUNNING_TEST_RPM);
            controller.enter(
                    new RunningTest(controller.nowNanos(), sessions(controller).runningTestNanos()));
        }

        @Override
        void paint(OutputLine output, Controller controller, long untilNanos) {
            output.play(sent, sinceNanos(), untilNanos);
        }

        @Override
        void jumperOut(Controller controller) {
            interrupted(controller);
            controller.enter(new Idling(controller.nowNanos()));
        }

        @Override
        void interrupted(Controller controller) {
            controller.output().sent(sent, sinceNanos(), controller.nowNanos());
        }
    }

    private static Sessions sessions(Controller controller) {
        return controller.setup().format().sessions().orElseThrow();
    }

    /** The engine is held at a raised speed and everything is looked at again and again. */
    static final class RunningTest extends Stage {
        private final long lengthNanos;
        private final Set<String> codes = new LinkedHashSet<>();
        private int looks;
        private boolean answered;
        private final List<PromptFlash> prompt = new ArrayList<>();

        private record PromptFlash(Transmission sent, long startNanos) {
            long endNanos() {
                return startNanos + sent.lamp().endNanos();
            }
        }

        RunningTest(long sinceNanos, long lengthNanos) {
            super(sinceNanos);
            this.lengthNanos = lengthNanos;
        }

        @Override
        long untilNanos() {
            return sinceNanos() + looks * LOOK_EVERY_NANOS;
        }

        @Override
        void elapsed(Controller controller) {
            codes.addAll(controller.codesNow(Segment.RUNNING, Phase.ENGINE_RUNNING));
            looks++;
            if (prompt.isEmpty()
                    && controller.setup().asksForThrottle()
                    && controller.nowNanos() >= sinceNanos() + lengthNanos / 2) {
                prompt(controller);
            }
            if (untilNanos() > sinceNanos() + lengthNanos) {
                end(controller);
            }
        }

        private void prompt(Controller controller) {
            Transmission sent =
                    controller.encoder().encodeCount(GroupKind.PROMPT, Segment.RUNNING, 1, new Pacing(1, 1, 1));
            prompt.add(new PromptFlash(sent, controller.nowNanos()));
            controller.event(Kind.PROMPT, "");
        }

        private void end(Controller controller) {
            if (!prompt.isEmpty() && !answered) {
                codes.addAll(controller.codesFor("prompt-not-answered", Segment.RUNNING));
            }
            notePrompt(controller);
            controller.engineBay().holdSpeed(AFTER_TEST_RPM);
            Transmission sent = controller
                    .encoder()
                    .encodeList(
                            Segment.RUNNING,
                            inListOrder(controller, codes),
                            new Pacing(4 * SECOND, AFTER_CODES_NANOS, 1));
            controller.enter(Sending.of(controller, sent, Segment.RUNNING, AwaitingBalance::new));
        }

        private void notePrompt(Controller controller) {
            prompt.forEach(flash -> controller.output().sent(flash.sent(), flash.startNanos(), controller.nowNanos()));
        }

        @Override
        void throttle(Controller controller, double fromShare, double toShare) {
            boolean waiting =
                    !prompt.isEmpty() && controller.nowNanos() <= prompt.get(0).endNanos() + PROMPT_WAIT_NANOS;
            if (waiting && !answered && toShare >= PRESSED_SHARE) {
                answered = true;
                controller.event(Kind.PROMPT_ANSWERED, "");
            }
        }

        @Override
        void paint(OutputLine output, Controller controller, long untilNanos) {
            for (PromptFlash flash : prompt) {
                if (output.nowNanos() < flash.endNanos()) {
                    output.play(flash.sent(), flash.startNanos(), Math.min(untilNanos, flash.endNanos()));
                }
            }
            output.hold(false, untilNanos);
        }

        @Override
        void jumperOut(Controller controller) {
            interrupted(controller);
            controller
                    .engineBay()
                    .holdSpeed(controller.setup().vehicle().engine().idleRpm());
            controller.enter(new Idling(controller.nowNanos()));
        }

        @Override
        void interrupted(Controller controller) {
            notePrompt(controller);
        }
    }

    /** All running codes are out: a press of the throttle of about half, and its release, starts the balance test. */
    static final class AwaitingBalance extends Stage {
        private boolean pressed;

        AwaitingBalance(long sinceNanos) {
            super(sinceNanos);
        }

        @Override
        void throttle(Controller controller, double fromShare, double toShare) {
            pressed |= toShare >= PRESSED_SHARE;
            boolean tellable = controller.setup().vehicle().cylinders().count() < BalanceVerdict.ALL_CONTRIBUTE_FLASHES;
            if (pressed && toShare < PRESSED_SHARE && tellable) {
                controller.enter(Balancing.begin(controller));
            }
        }

        @Override
        void jumperOut(Controller controller) {
            controller
                    .engineBay()
                    .holdSpeed(controller.setup().vehicle().engine().idleRpm());
            controller.enter(new Idling(controller.nowNanos()));
        }
    }

    /** One injector after the other is cut. */
    static final class Balancing extends Stage {
        private final CylinderBalance test;
        private final long endNanos;

        private Balancing(long sinceNanos, CylinderBalance test, long endNanos) {
            super(sinceNanos);
            this.test = test;
            this.endNanos = endNanos;
        }

        static Stage begin(Controller controller) {
            BalancePlan plan = BalancePlan.usual();
            int cylinders = controller.setup().vehicle().cylinders().count();
            BalanceJudge judge = BalanceJudge.ofRepeat(controller.nextBalanceTest());
            CylinderBalance test = new CylinderBalance(controller.engine().orElseThrow(), plan, judge);
            controller.engineBay().balancing(test);
            controller.event(Kind.BALANCE_BEGINS, "");
            long length = Math.round(plan.seconds(cylinders) * SECOND) + LOOK_EVERY_NANOS;
            return new Balancing(controller.nowNanos(), test, controller.nowNanos() + length);
        }

        @Override
        long untilNanos() {
            return endNanos;
        }

        @Override
        void elapsed(Controller controller) {
            controller.engineBay().balancing(null);
            BalanceVerdict verdict = test.verdict().orElseThrow();
            if (verdict.flashes().isEmpty()) {
                controller.event(Kind.BALANCE_SPOILED, "");
                controller.enter(new AwaitingBalance(controller.nowNanos()));
                return;
            }
            controller.event(Kind.BALANCE_ENDS, "");
            Transmission sent = controller
                    .encoder()
                    .encode(
                            new Message.Balance(verdict.flashes().getAsInt()),
                            new Pacing(2 * SECOND, AFTER_CODES_NANOS, 1));
            controller.enter(Sending.of(controller, sent, Segment.BALANCE, AwaitingBalance::new));
        }

        @Override
        void jumperOut(Controller controller) {
            controller.engineBay().balancing(null);
            controller
                    .engineBay()
                    .holdSpeed(controller.setup().vehicle().engine().idleRpm());
            controller.enter(new Idling(controller.nowNanos()));
        }
    }
}
