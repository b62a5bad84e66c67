package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.CodeShape.Sign;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.FlashFormat.Sessions;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/**
 * Writes random recordings of a format with the liberties that senders take: bulb checks, long and short waits, frames
 * here or there, lists of any length. It shares no code with the encoder, so that the two check each other.
 */
final class SampleWriter {
    private static final long SECOND = 1_000_000_000L;

    private final FlashFormat format;
    private final Chance chance;
    private final PulseTrain.Builder lamp = PulseTrain.builder();
    private final PulseTrain.Builder wire = PulseTrain.builder();
    private final Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
    private final StringBuilder told = new StringBuilder();

    private SampleWriter(FlashFormat format, Chance chance) {
        this.format = format;
        this.chance = chance;
    }

    static Sample write(FlashFormat format, Chance chance) {
        return new SampleWriter(format, chance).sample();
    }

    private Sample sample() {
        boolean bulb = chance.happens(0.25);
        stay(false, seconds(bulb ? 0.2 : 0.05, 3));
        if (bulb) {
            told.append("bulb check, ");
            stay(true, seconds(1.5, 5));
            stay(false, seconds(0.8, 8));
        }
        if (chance.happens(0.2)) {
            told.append("long wait, ");
            stay(false, seconds(3, 40));
        }
        if (format.sessions().isPresent()) {
            sessions(format.sessions().get());
        } else {
            loops();
        }
        stay(false, chance.happens(0.5) ? SECOND : seconds(0.3, 20));
        return new Sample(format, lamp.build(), wire.build(), codes, told.toString());
    }

    private void sessions(Sessions each) {
        switch (chance.below(6)) {
            case 0 -> running(each);
            case 1 -> balance(each);
            case 2 -> {
                keyOn(each);
                stay(false, seconds(20, 120));
                running(each);
                stay(false, seconds(20, 120));
                balance(each);
            }
            default -> keyOn(each);
        }
    }

    private void keyOn(Sessions sessions) {
        listTwice(Segment.PRESENT, SECOND / 2);
        stay(false, sessions.aroundSeparatorNanos());
        lone(sessions.separatorFlashes(), sessions.cylinderFlash());
        listTwice(Segment.STORED, sessions.aroundSeparatorNanos());
    }

    private void running(Sessions sessions) {
        lone(1 + chance.below(6), sessions.cylinderFlash());
        long testNanos = seconds(20, 180);
        if (chance.happens(0.5)) {
            told.append("prompt, ");
            stay(false, testNanos / 2);
            lone(1, sessions.cylinderFlash());
            testNanos /= 2;
        }
        listTwice(Segment.RUNNING, testNanos);
    }

    private void balance(Sessions sessions) {
        int flashes = 1 + chance.below(sessions.mostBalanceFlashes());
        codes.put(Segment.BALANCE, List.of(Integer.toString(flashes)));
        after(SECOND / 2, line -> flashes(line, Collections.nCopies(flashes, sessions.cylinderFlash())));
    }

    private void listTwice(Segment segment, long waitNanos) {
        List<String> list = codes(segment);
        after(waitNanos, line -> {
            for (int time = 0; time < format.repeats().listTimes(); time++) {
                for (int i = 0; i < list.size(); i++) {
                    if (time + i > 0) {
                        line.dark(format.gaps().betweenCodesNanos());
                    }
                    code(line, list.get(i));
                }
            }
        });
    }

    /** A list on the lamp; on the wire in the wait before it also a hundred times faster, where the format does that. */
    private void after(long waitNanos, Consumer<Line> list) {
        long restNanos = waitNanos;
        if (format.burst().isPresent()) {
            long before = seconds(0.2, 2);
            lamp.dark(before);
            wire.dark(before);
            PulseTrain.Builder fast = PulseTrain.builder();
            list.accept(new Line(format.burst().get().timesFaster(), fast));
            PulseTrain pulses = fast.build();
            pulses.intervals().forEach(each -> wire.stay(each.lit(), each.lengthNanos()));
            lamp.dark(pulses.endNanos());
            restNanos = Math.max(SECOND / 4, waitNanos - before - pulses.endNanos());
        }
        stay(false, restNanos);
        list.accept(new Line(1, lamp, wire));
    }

    private void loops() {
        int loops = 1 + chance.below(4);
        told.append(loops).append(" loops, ");
        List<String> list = codes(Segment.CODES);
        Line line = new Line(1, lamp, wire);
        if (list.isEmpty() && format.nothingToReport() instanceof NothingToReport.Blinking blinking) {
            for (int i = 0; i < 8 * loops; i++) {
                stay(true, blinking.onNanos());
                stay(false, blinking.offNanos());
            }
            return;
        }
        int frames = chance.below(3);
        boolean framed = format.framingCode().isPresent();
        boolean begun = false;
        if (framed) {
            begun = each(line, format.framingCode().get(), false, false);
        }
        for (int loop = 0; loop < (format.repeats().loops() ? loops : 1); loop++) {
            if (framed && frames == 2 && loop > 0) {
                begun = each(line, format.framingCode().get(), begun, false);
            }
            for (int i = 0; i < list.size(); i++) {
                begun = each(line, list.get(i), begun, i == 0 && loop > 0);
            }
        }
        if (framed && frames > 0) {
            told.append("framed at ").append(frames == 1 ? "both ends, " : "each loop, ");
            each(line, format.framingCode().get(), begun, false);
        }
    }

    private boolean each(Line line, String code, boolean begun, boolean repeat) {
        boolean after = begun;
        for (int time = 0; time < format.repeats().eachCodeTimes(); time++) {
            if (after) {
                boolean again = repeat && time == 0;
                line.dark(
                        again
                                ? format.gaps().beforeRepeatNanos()
                                : format.gaps().betweenCodesNanos());
            }
            format.leadIn().ifPresent(leadIn -> {
                line.lit(leadIn.litNanos());
                line.dark(leadIn.darkAfterNanos());
            });
            code(line, code);
            after = true;
        }
        return true;
    }

    private void code(Line line, String code) {
        List<Sign> signs = format.shape().signs(code).orElseThrow();
        for (int i = 0; i < signs.size(); i++) {
            if (i > 0) {
                line.dark(format.gaps().betweenDigitsNanos());
            }
            flashes(line, signs.get(i).flashes());
        }
    }

    private void flashes(Line line, List<FlashKind> flashes) {
        for (int i = 0; i < flashes.size(); i++) {
            if (i > 0) {
                line.dark(format.gaps().withinDigitNanos());
            }
            line.lit(flashes.get(i).onNanos());
        }
    }

    private void lone(int flashes, FlashKind kind) {
        told.append("lone ").append(flashes).append(", ");
        flashes(new Line(1, lamp, wire), Collections.nCopies(flashes, kind));
    }

    /** One code, a few or many; ones, nines or anything. */
    private List<String> codes(Segment segment) {
        int most = format.repeats().mostCodes();
        int wanted = Math.min(most, chance.happens(0.15) ? 15 : 1 + chance.below(5));
        boolean nothing = chance.happens(0.15)
                && (format.sessions().isPresent()
                        || format.framingCode().isPresent()
                        || format.nothingToReport() instanceof NothingToReport.Blinking);
        List<String> list = new ArrayList<>();
        int mood = chance.below(4);
        while (!nothing && list.size() < wanted) {
            String code = code(mood);
            if (format.refusal(code).isEmpty() && !list.contains(code)) {
                list.add(code);
            } else {
                mood = 3;
            }
        }
        if (nothing && format.passCode().isPresent()) {
            list.add(format.passCode().get());
        }
        codes.put(segment, List.copyOf(list));
        return list;
    }

    private String code(int mood) {
        CodeShape.Counted counted = (CodeShape.Counted) format.shape();
        StringBuilder code = new StringBuilder();
        for (CodeShape.Place place : counted.places()) {
            List<String> digits = List.copyOf(place.counts().keySet());
            int index = switch (mood) {
                case 0 -> 0;
                case 1 -> digits.size() - 1;
                default -> chance.below(digits.size());
            };
            code.append(digits.get(index));
        }
        return code.toString();
    }

    private void stay(boolean lit, long nanos) {
        lamp.stay(lit, nanos);
        wire.stay(lit, nanos);
    }

    private long seconds(double from, double to) {
        return Math.round(chance.between(from, to) * SECOND);
    }

    /** Where flashes are written to, at some speed. */
    private record Line(int timesFaster, List<PulseTrain.Builder> trains) {
        Line(int timesFaster, PulseTrain.Builder... trains) {
            this(timesFaster, List.of(trains));
        }

        void lit(long nanos) {
            trains.forEach(each -> each.lit(nanos / timesFaster));
        }

        void dark(long nanos) {
            trains.forEach(each -> each.dark(nanos / timesFaster));
        }
    }
}
