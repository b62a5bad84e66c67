package telltally.simulator.format;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import telltally.simulator.format.CodeShape.Sign;
import telltally.simulator.format.FlashFormat.Burst;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Turns messages into pulses by the rules of one format. */
public final class Encoder {
    /** The gap on the wire on either side of a fast list, so that no instrument takes it for part of the slow one. */
    private static final long AROUND_BURST_NANOS = 1_000_000_000L;

    /** Even blinking does not end; a recording holds this many blinks for each loop of a list that it would hold. */
    private static final int BLINKS_A_LOOP = 8;

    private final FlashFormat format;

    public Encoder(FlashFormat format) {
        this.format = format;
    }

    /** @throws IllegalArgumentException if the format cannot send the message; {@link Message#refusal} tells before */
    public Transmission encode(Message message, Pacing pacing) {
        message.refusal(format).ifPresent(reason -> {
            throw new IllegalArgumentException(reason);
        });
        Run run = new Run(pacing);
        if (message instanceof Message.KeyOn keyOn) {
            run.keyOn(keyOn, sessions());
        } else if (message instanceof Message.Running running) {
            run.running(running, sessions());
        } else if (message instanceof Message.Balance balance) {
            run.balance(balance, sessions());
        } else if (message instanceof Message.Codes list) {
            run.segment(Segment.CODES, list.codes(), pacing.leadNanos());
        }
        return run.finish();
    }

    /**
     * The list of one segment alone, repeated as the format says, as a controller sends it within a longer test.
     *
     * @throws IllegalArgumentException if the format cannot send one of the codes
     */
    public Transmission encodeList(Segment segment, List<String> codes, Pacing pacing) {
        codes.forEach(code -> format.shape().refusal(code).ifPresent(reason -> {
            throw new IllegalArgumentException(code + ": " + reason);
        }));
        Run run = new Run(pacing);
        run.segment(segment, codes, pacing.leadNanos());
        return run.finish();
    }

    /** One lone group of flashes that is no code: cylinder flashes, a prompt. */
    public Transmission encodeCount(GroupKind kind, Segment segment, int flashes, Pacing pacing) {
        Run run = new Run(pacing);
        run.lamp.gap(pacing.leadNanos());
        run.lamp.group(kind, segment, run.counted(sessions(), flashes));
        return run.finish();
    }

    private Sessions sessions() {
        return format.sessions().orElseThrow();
    }

    /** A fast list and when it begins. */
    private record PlacedBurst(long startNanos, PulseTrain pulses) {}

    /** One recording under construction. */
    private final class Run {
        private final Pacing pacing;
        private final SignalLine lamp = new SignalLine(format, 1);
        private final List<PlacedBurst> bursts = new ArrayList<>();
        private final Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);

        Run(Pacing pacing) {
            this.pacing = pacing;
        }

        void keyOn(Message.KeyOn keyOn, Sessions sessions) {
            segment(Segment.PRESENT, keyOn.present(), pacing.leadNanos());
            lamp.gap(sessions.aroundSeparatorNanos());
            lamp.group(GroupKind.SEPARATOR, Segment.PRESENT, counted(sessions, sessions.separatorFlashes()));
            segment(Segment.STORED, keyOn.stored(), sessions.aroundSeparatorNanos());
        }

        void running(Message.Running running, Sessions sessions) {
            lamp.gap(pacing.leadNanos());
            lamp.group(GroupKind.CYLINDERS, Segment.RUNNING, counted(sessions, running.cylinders() / 2));
            long testNanos = sessions.runningTestNanos();
            if (running.prompt()) {
                lamp.gap(testNanos / 2);
                lamp.group(GroupKind.PROMPT, Segment.RUNNING, counted(sessions, 1));
                testNanos -= testNanos / 2;
            }
            segment(Segment.RUNNING, running.codes(), testNanos);
        }

        void balance(Message.Balance balance, Sessions sessions) {
            List<Sign> result = counted(sessions, balance.flashes());
            codes.put(Segment.BALANCE, List.of(result.get(0).text()));
            sendAfter(pacing.leadNanos(), line -> line.group(GroupKind.BALANCE, Segment.BALANCE, result));
        }

        /** The list of a segment, repeated as the format says, after a wait. */
        void segment(Segment segment, List<String> list, long waitNanos) {
            List<String> sent = list.isEmpty() ? format.passCode().map(List::of).orElse(List.of()) : list;
            codes.put(segment, sent);
            sendAfter(waitNanos, line -> list(line, segment, sent));
        }

        private void list(SignalLine line, Segment segment, List<String> list) {
            if (list.isEmpty() && format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
                line.blink(segment, blinking, BLINKS_A_LOOP * pacing.loops());
                return;
            }
            framing(line, segment);
            int listTimes =
                    format.repeats().loops() ? pacing.loops() : format.repeats().listTimes();
            for (int time = 0; time < listTimes; time++) {
                for (String code : list) {
                    boolean repeat = time > 0 && code.equals(list.get(0));
                    repeated(line, segment, code, GroupKind.CODE, repeat);
                }
            }
            framing(line, segment);
        }

        private void framing(SignalLine line, Segment segment) {
            format.framingCode().ifPresent(code -> repeated(line, segment, code, GroupKind.SEPARATOR, false));
        }

        /** One code as often as the format sends each, with the gap before it unless it is the first of all. */
        private void repeated(SignalLine line, Segment segment, String code, GroupKind kind, boolean listBegins) {
            for (int time = 0; time < format.repeats().eachCodeTimes(); time++) {
                if (line.listBegun()) {
                    boolean repeat = listBegins && time == 0;
                    line.gap(
                            repeat
                                    ? format.gaps().beforeRepeatNanos()
                                    : format.gaps().betweenCodesNanos());
                }
                format.leadIn().ifPresent(leadIn -> line.leadIn(segment, leadIn));
                line.group(kind, segment, format.shape().signs(code).orElseThrow());
            }
        }

        /** Waits, with the fast list on the wire at the end of that wait, then sends the slow one. */
        private void sendAfter(long waitNanos, Consumer<SignalLine> sending) {
            Optional<PulseTrain> fast = format.burst().flatMap(burst -> fastList(burst, sending));
            long roomNanos = fast.map(pulses -> pulses.endNanos() + 2 * AROUND_BURST_NANOS)
                    .orElse(0L);
            lamp.gap(Math.max(waitNanos, roomNanos));
            fast.ifPresent(pulses ->
                    bursts.add(new PlacedBurst(lamp.nowNanos() - AROUND_BURST_NANOS - pulses.endNanos(), pulses)));
            lamp.beginList();
            sending.accept(lamp);
        }

        /** Nothing, where nothing is sent. */
        private Optional<PulseTrain> fastList(Burst burst, Consumer<SignalLine> sending) {
            SignalLine line = new SignalLine(format, burst.timesFaster());
            sending.accept(line);
            return line.nowNanos() == 0 ? Optional.empty() : Optional.of(line.train());
        }

        Transmission finish() {
            lamp.gap(pacing.tailNanos());
            PulseTrain shown = lamp.train();
            return new Transmission(shown, withBursts(shown), lamp.groups(), codes);
        }

        /** Every burst lies within one gap of the slow train, since that is where it was made room for. */
        private PulseTrain withBursts(PulseTrain slow) {
            PulseTrain.Builder wire = PulseTrain.builder();
            int next = 0;
            for (Interval interval : slow.intervals()) {
                while (next < bursts.size() && bursts.get(next).startNanos() < interval.endNanos()) {
                    PlacedBurst burst = bursts.get(next++);
                    wire.stay(interval.lit(), burst.startNanos() - wire.nowNanos());
                    burst.pulses().intervals().forEach(each -> wire.stay(each.lit(), each.lengthNanos()));
                }
                wire.stay(interval.lit(), interval.endNanos() - wire.nowNanos());
            }
            return wire.build();
        }

        private List<Sign> counted(Sessions sessions, int flashes) {
            return List.of(new Sign(Integer.toString(flashes), Collections.nCopies(flashes, sessions.cylinderFlash())));
        }
    }
}
