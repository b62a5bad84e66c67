package telltally.decoder.lattice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/**
 * Random sessions with known codes, spoilt on purpose. Written from the table of formats, not from the encoder, so that
 * a mistake of the encoder's is not the decoder's too.
 */
final class PracticeSessions {
    /** What spoils a session. */
    enum Spoiler {
        CLEAN,
        CLOCK,
        BOUNCE,
        FRAMES,
        JITTER,
        TAPS,
        ROUGH,
        MISSED,
        GHOSTS,
        MIXED,
        MIDWAY,
        WIRE,
        EARLY
    }

    /**
     * @param codes what was sent, or of a session watched from midway what a perfect observer can know
     * @param repeated whether every code list was still seen whole at least once more
     */
    record Session(PulseTrain train, Map<Segment, List<String>> codes, boolean repeated, String story) {}

    private final FlashFormat format;
    private final Chance chance;
    private final List<double[]> flashes = new ArrayList<>();
    private final Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
    private final StringBuilder story = new StringBuilder();
    /** When each group of a code began and ended, with its segment and code. */
    private record Sent(Segment segment, String code, double start, double end) {}

    private final List<Sent> sent = new ArrayList<>();
    private double now;
    private double lastEnd;
    private double firstSendingEnd;

    private PracticeSessions(FlashFormat format, Chance chance) {
        this.format = format;
        this.chance = chance;
    }

    static Session session(FlashFormat format, Spoiler spoiler, long seed) {
        Chance chance = Chance.of(seed).stream(format.id()).stream(spoiler.name());
        return new PracticeSessions(format, chance).make(spoiler);
    }

    private Session make(Spoiler spoiler) {
        boolean bulb = chance.happens(0.15);
        now = 0;
        if (bulb) {
            double wait = chance.happens(0.5) ? 0.001 : chance.between(0.2, 1);
            now = wait;
            lit(chance.between(1.5, 5));
        }
        double lead = chance.happens(0.3) ? 0.2 : chance.between(0.2, 10);
        now += lead;
        double messageStart = now;
        message(spoiler);
        double tail = chance.happens(0.3) ? 0.5 : chance.between(0.5, 10);
        return spoil(spoiler, lastEnd + tail, messageStart);
    }

    private void lit(double seconds) {
        flashes.add(new double[] {now, now + seconds});
        now += seconds;
        lastEnd = now;
    }

    private static double s(long nanos) {
        return nanos * 1e-9;
    }

    private String code() {
        for (; ; ) {
            StringBuilder code = new StringBuilder();
            for (CodeShape.Place place : ((CodeShape.Counted) format.shape()).places()) {
                List<String> digits = List.copyOf(place.counts().keySet());
                code.append(digits.get(chance.below(digits.size())));
            }
            if (!format.framingCode().equals(java.util.Optional.of(code.toString()))) {
                return code.toString();
            }
        }
    }

    private List<String> list(double empty) {
        if (chance.happens(empty)) {
            return format.passCode().map(List::of).orElse(List.of());
        }
        int most = Math.min(10, format.repeats().mostCodes());
        int wanted = chance.happens(0.6) ? 1 + chance.below(Math.min(4, most)) : 1 + chance.below(most);
        Set<String> list = new LinkedHashSet<>();
        while (list.size() < wanted) {
            list.add(code());
        }
        return List.copyOf(list);
    }

    private void message(Spoiler spoiler) {
        if (format.sessions().isPresent()) {
            int kind = chance.below(10);
            if (kind < 6 || spoiler == Spoiler.MIDWAY) {
                List<String> present = list(0.2);
                send(Segment.PRESENT, present);
                firstSendingEnd = firstEnd(Segment.PRESENT, present.size());
                now += s(format.sessions().get().aroundSeparatorNanos());
                counted(format.sessions().get().separatorFlashes());
                now += s(format.sessions().get().aroundSeparatorNanos());
                send(Segment.STORED, list(0.2));
            } else if (kind < 9) {
                counted(1 + chance.below(6));
                now += chance.between(20, 180);
                if (chance.happens(0.3)) {
                    counted(1);
                    now += chance.between(20, 90);
                }
                send(Segment.RUNNING, list(0.2));
            } else {
                int flashes = 1 + chance.below(9);
                counted(flashes);
                codes.put(Segment.BALANCE, List.of(Integer.toString(flashes)));
            }
            return;
        }
        boolean blinking = format.nothingToReport() instanceof NothingToReport.Blinking;
        List<String> list = list(blinking && spoiler != Spoiler.MIDWAY ? 0.12 : 0);
        if (list.isEmpty() && format.nothingToReport() instanceof NothingToReport.Blinking blink) {
            codes.put(Segment.CODES, list);
            int times = 8 * (1 + chance.below(4));
            for (int i = 0; i < times; i++) {
                now += i == 0 ? 0 : s(blink.offNanos());
                lit(s(blink.onNanos()));
            }
            return;
        }
        send(Segment.CODES, list);
    }

    private double firstEnd(Segment segment, int size) {
        int at = size * format.repeats().eachCodeTimes() - 1;
        return sent.stream()
                .filter(each -> each.segment() == segment)
                .skip(at)
                .findFirst()
                .orElseThrow()
                .end();
    }

    private void counted(int flashes) {
        for (int i = 0; i < flashes; i++) {
            now += i == 0 ? 0 : s(format.gaps().withinDigitNanos());
            lit(s(format.sessions().orElseThrow().cylinderFlash().onNanos()));
        }
    }

    private void send(Segment segment, List<String> list) {
        codes.put(segment, list);
        int times = format.repeats().loops()
                ? 1 + chance.below(4)
                : format.repeats().listTimes();
        int framed = format.framingCode().isPresent() ? chance.below(3) : -1;
        boolean first = true;
        for (int time = 0; time < times; time++) {
            if (framed >= 0 && (time == 0 || framed == 2)) {
                first = repeated(segment, format.framingCode().orElseThrow(), first, false, true);
            }
            boolean begins = time > 0 && framed != 2;
            for (String code : list) {
                first = repeated(segment, code, first, begins, false);
                begins = false;
            }
            if (time == 0) {
                firstSendingEnd = lastEnd;
            }
        }
        if (framed >= 1) {
            repeated(segment, format.framingCode().orElseThrow(), first, false, true);
        }
        story.append(segment)
                .append(' ')
                .append(list)
                .append(" x")
                .append(times)
                .append(' ');
        if (times < 2 && format.repeats().eachCodeTimes() < 2) {
            firstSendingEnd = -1;
        }
    }

    private boolean repeated(Segment segment, String code, boolean first, boolean begins, boolean framing) {
        boolean none = first;
        for (int i = 0; i < format.repeats().eachCodeTimes(); i++) {
            if (!none) {
                now += begins && i == 0
                        ? s(format.gaps().beforeRepeatNanos())
                        : s(format.gaps().betweenCodesNanos());
            }
            none = false;
            format.leadIn().ifPresent(leadIn -> {
                lit(s(leadIn.litNanos()));
                now += s(leadIn.darkAfterNanos());
            });
            double start = now;
            List<CodeShape.Place> places = ((CodeShape.Counted) format.shape()).places();
            for (int place = 0; place < places.size(); place++) {
                now += place == 0 ? 0 : s(format.gaps().betweenDigitsNanos());
                String digit = places.size() == 1 ? code : code.substring(place, place + 1);
                int count = places.get(place).counts().get(digit);
                for (int k = 0; k < count; k++) {
                    now += k == 0 ? 0 : s(format.gaps().withinDigitNanos());
                    lit(s(places.get(place).flash().onNanos()));
                }
            }
            if (!framing) {
                sent.add(new Sent(segment, code, start, now));
            }
        }
        return false;
    }

    private Session spoil(Spoiler spoiler, double end, double messageStart) {
        boolean repeated = true;
        switch (spoiler) {
            case CLEAN, WIRE -> {}
            case CLOCK -> stretch(chance.between(0.85, 1.18), 0);
            case BOUNCE -> bounce();
            case FRAMES -> frames(0.1);
            case JITTER -> stretch(1, 0.06);
            case TAPS -> taps(chance.between(0.03, 0.06));
            case ROUGH -> stretch(chance.between(0.8, 1.25), 0.11);
            case MISSED -> miss(0.015);
            case GHOSTS -> ghosts(0.03);
            case MIXED -> {
                miss(0.006);
                stretch(chance.between(0.88, 1.14), 0.05);
                ghosts(0.01);
                if (chance.happens(0.3)) {
                    bounce();
                }
            }
            case MIDWAY -> repeated = midway(messageStart);
            case EARLY -> end = early(messageStart);
        }
        double last = flashes.get(flashes.size() - 1)[1];
        PulseTrain train = train(Math.max(end, last + 0.3));
        return new Session(train, Map.copyOf(codes), repeated, story.toString());
    }

    /** A session of which nothing is seen is no session. */
    private void miss(double share) {
        List<double[]> all = List.copyOf(flashes);
        flashes.removeIf(flash -> chance.happens(share));
        if (flashes.isEmpty()) {
            flashes.addAll(all);
        }
    }

    private void stretch(double scale, double jitter) {
        double from = 0;
        double to = 0;
        for (double[] flash : flashes) {
            double dark = flash[0] - from;
            double on = flash[1] - flash[0];
            from = flash[1];
            flash[0] = to + dark * scale * Math.max(0.1, 1 + jitter * chance.nextNormal());
            flash[1] = flash[0] + on * scale * Math.max(0.1, 1 + jitter * chance.nextNormal());
            to = flash[1];
        }
    }

    private void bounce() {
        List<double[]> bounced = new ArrayList<>();
        for (double[] flash : flashes) {
            double start = flash[0];
            for (int i = chance.below(4); i > 0; i--) {
                double on = chance.between(0.0005, 0.006);
                bounced.add(new double[] {start, start + on});
                start += on + chance.between(0.0005, 0.004);
            }
            double mid = flash[1];
            List<double[]> after = new ArrayList<>();
            double at = flash[1];
            for (int i = chance.below(4); i > 0; i--) {
                at += chance.between(0.0005, 0.004);
                double on = chance.between(0.0005, 0.006);
                after.add(new double[] {at, at + on});
                at += on;
            }
            bounced.add(new double[] {start, mid});
            bounced.addAll(after);
        }
        flashes.clear();
        flashes.addAll(bounced);
    }

    private void frames(double period) {
        double phase = chance.nextUnit() * period;
        List<double[]> seen = new ArrayList<>();
        for (double[] flash : flashes) {
            double from = Math.ceil((flash[0] - phase) / period) * period + phase;
            double to = Math.ceil((flash[1] - phase) / period) * period + phase;
            if (to > from) {
                seen.add(new double[] {from, to});
            }
        }
        flashes.clear();
        flashes.addAll(seen);
    }

    private void taps(double spread) {
        double press = chance.between(0.15, 0.3);
        double release = press + chance.between(-0.02, 0.02);
        double last = 0;
        for (double[] flash : flashes) {
            flash[0] = Math.max(last + 0.02, flash[0] + press + spread * chance.nextNormal());
            flash[1] = Math.max(flash[0] + 0.02, flash[1] + release + spread * chance.nextNormal());
            last = flash[1];
        }
    }

    private void ghosts(double share) {
        List<double[]> more = new ArrayList<>();
        for (int i = 0; i < flashes.size(); i++) {
            more.add(flashes.get(i));
            double from = flashes.get(i)[1];
            double to = i + 1 < flashes.size() ? flashes.get(i + 1)[0] : from + 0.4;
            double on = chance.between(0.03, 0.12);
            if (chance.happens(share) && to - from > on + 0.06) {
                double at = chance.between(from + 0.03, to - on - 0.03);
                more.add(new double[] {at, at + on});
            }
        }
        flashes.clear();
        flashes.addAll(more);
    }

    /** Cuts the beginning off; what the rest can still tell becomes the expected answer. */
    private boolean midway(double messageStart) {
        boolean repeats = firstSendingEnd > 0;
        double until = repeats ? firstSendingEnd : lastEnd * 0.6 + messageStart * 0.4;
        double cut = chance.between(messageStart, until);
        List<double[]> rest = new ArrayList<>();
        for (double[] flash : flashes) {
            if (flash[1] > cut) {
                rest.add(new double[] {Math.max(0, flash[0] - cut), flash[1] - cut});
            }
        }
        lastEnd -= cut;
        flashes.clear();
        flashes.addAll(rest);
        story.append(" cut at ").append(cut);
        Map<Segment, Set<String>> whole = new EnumMap<>(Segment.class);
        for (Sent each : sent) {
            if (each.start() >= cut) {
                whole.computeIfAbsent(each.segment(), segment -> new LinkedHashSet<>())
                        .add(each.code());
            }
        }
        boolean all = true;
        for (Map.Entry<Segment, List<String>> segment : codes.entrySet()) {
            all &= whole.getOrDefault(segment.getKey(), Set.of()).size()
                    == segment.getValue().size();
        }
        if (!all) {
            keep(whole);
        }
        return all;
    }

    /** Of a list that was not seen whole, the codes that were, in the order seen. */
    private void keep(Map<Segment, Set<String>> whole) {
        Map<Segment, List<String>> sentCodes = new EnumMap<>(codes);
        codes.clear();
        whole.forEach((segment, list) -> {
            List<String> all = sentCodes.getOrDefault(segment, List.of());
            codes.put(segment, all.size() == list.size() ? all : List.copyOf(list));
        });
    }

    private double early(double messageStart) {
        double cut = chance.between(messageStart + 0.5 * (lastEnd - messageStart), lastEnd);
        flashes.removeIf(flash -> flash[0] >= cut);
        flashes.forEach(flash -> flash[1] = Math.min(flash[1], cut));
        Map<Segment, Set<String>> whole = new EnumMap<>(Segment.class);
        for (Sent each : sent) {
            if (each.end() <= cut) {
                whole.computeIfAbsent(each.segment(), segment -> new LinkedHashSet<>())
                        .add(each.code());
            }
        }
        if (!codes.containsKey(Segment.BALANCE)
                && !codes.getOrDefault(Segment.CODES, List.of("x")).isEmpty()) {
            keep(whole);
        }
        return cut + 0.0001;
    }

    private PulseTrain train(double end) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        for (double[] flash : flashes) {
            long start = Math.max(pulses.nowNanos(), (long) (flash[0] * 1e9));
            long stop = Math.min((long) (flash[1] * 1e9), (long) (end * 1e9) - 1);
            if (stop > start) {
                pulses.dark(start - pulses.nowNanos());
                pulses.lit(stop - start);
            }
        }
        pulses.dark(Math.max(1, (long) (end * 1e9) - pulses.nowNanos()));
        return pulses.build();
    }
}
