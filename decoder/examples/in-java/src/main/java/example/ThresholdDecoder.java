package example;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport.Blinking;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Counts flashes between thresholds that lie halfway between a format's gaps, once the sender's clock is estimated. */
public final class ThresholdDecoder implements Decoder {
    private static final long BOUNCE_NANOS = 15_000_000;

    @Override
    public String id() {
        return "threshold-java";
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        return candidates.stream()
                .filter(format -> format.shape() instanceof Counted && !format.restsLit())
                .map(format -> new Attempt(format, train))
                .filter(attempt -> !attempt.codes.isEmpty())
                .min(Comparator.comparingDouble(attempt -> attempt.misfit))
                .map(Attempt::reading)
                .orElseGet(() -> Reading.nothing(new Warning(0, WarningKind.NO_FORMAT, "nothing that can be counted")));
    }

    /** One format tried on one train. */
    private static final class Attempt {
        private final FlashFormat format;
        private final List<Place> places;
        private final List<Long> lit = new ArrayList<>(); // nominal lengths
        private final List<Long> dark = new ArrayList<>();
        private final List<Interval> flashes = new ArrayList<>();
        private final Map<Segment, Set<String>> codes = new EnumMap<>(Segment.class);
        private Segment segment;
        private double clock = 1;
        private double misfit = Double.MAX_VALUE;

        Attempt(FlashFormat format, PulseTrain train) {
            this.format = format;
            places = ((Counted) format.shape()).places();
            segment = format.segments().get(0);
            format.flashKinds().forEach(kind -> lit.add(kind.onNanos()));
            dark.addAll(List.of(format.gaps().withinDigitNanos(), format.gaps().betweenDigitsNanos()));
            dark.addAll(List.of(format.gaps().betweenCodesNanos(), format.gaps().beforeRepeatNanos()));
            format.leadIn().ifPresent(leadIn -> lit.add(leadIn.litNanos()));
            format.sessions().ifPresent(sessions -> dark.add(sessions.aroundSeparatorNanos()));
            if (format.nothingToReport() instanceof Blinking blinking) {
                lit.add(blinking.onNanos());
                dark.add(blinking.offNanos());
            }
            findFlashes(train);
            estimateClock();
            readGroups();
        }

        /** Gaps of a bouncing contact are closed; light far too short for a flash is left out. */
        private void findFlashes(PulseTrain train) {
            for (Interval each : train.intervals()) {
                int last = flashes.size() - 1;
                if (each.lit() && last >= 0 && each.startNanos() - flashes.get(last).endNanos() < BOUNCE_NANOS) {
                    flashes.set(last, new Interval(true, flashes.get(last).startNanos(), each.endNanos()));
                } else if (each.lit()) {
                    flashes.add(each);
                }
            }
            double shortest = 0.62 * lit.stream().mapToLong(each -> each).min().orElseThrow();
            flashes.removeIf(each -> each.lengthNanos() < shortest);
        }

        /** The clock that brings flashes and gaps nearest to lengths that the format sends. */
        private void estimateClock() {
            for (double tried = 0.75; tried < 1.34; tried += 0.01) {
                double sum = 0.1 * Math.abs(Math.log(tried));
                for (int i = 0; i < flashes.size(); i++) {
                    sum += misfit(flashes.get(i).lengthNanos(), lit, tried);
                    sum += i + 1 == flashes.size() ? 0 : misfit(gapAfter(i), dark, tried);
                }
                if (sum < misfit) {
                    misfit = sum;
                    clock = tried;
                }
            }
        }

        private static double misfit(double length, List<Long> nominal, double clock) {
            double least = 1;
            for (long each : nominal) {
                least = Math.min(least, Math.abs(Math.log(length / (each * clock))));
            }
            return least;
        }

        private double gapAfter(int index) {
            return index + 1 == flashes.size()
                    ? Double.MAX_VALUE
                    : flashes.get(index + 1).startNanos() - flashes.get(index).endNanos();
        }

        /** Halfway between two nominal lengths, by their ratio. */
        private double between(long shorter, long longer) {
            return clock * Math.sqrt((double) shorter * longer);
        }

        private void readGroups() {
            if (!flashes.isEmpty() && isBlink(flashes.get(0))) {
                codes.put(segment, Set.of());
                return;
            }
            long insideCode = places.size() > 1 ? dark.get(1) : dark.get(0);
            double newDigit = between(dark.get(0), places.size() > 1 ? dark.get(1) : dark.get(2));
            double newCode = format.leadIn().isPresent() ? Double.MAX_VALUE : between(insideCode, dark.get(2));
            List<Integer> counts = new ArrayList<>();
            int count = 0;
            boolean first = true;
            for (int i = 0; i < flashes.size(); i++) {
                if (isLeadIn(flashes.get(i))) {
                    continue;
                }
                count++;
                boolean announced = i + 1 < flashes.size() && isLeadIn(flashes.get(i + 1));
                if (gapAfter(i) >= newDigit || announced) {
                    counts.add(count);
                    count = 0;
                }
                if (gapAfter(i) >= newCode || announced || i + 1 == flashes.size()) {
                    group(counts, gapAfter(i), first, i + 1 == flashes.size());
                    counts.clear();
                    first = false;
                }
            }
        }

        private boolean isBlink(Interval flash) {
            return format.nothingToReport() instanceof Blinking blinking
                    && flash.lengthNanos() < between(blinking.onNanos(), lit.get(0));
        }

        private boolean isLeadIn(Interval flash) {
            return format.leadIn().isPresent()
                    && flash.lengthNanos() > between(lit.get(0), format.leadIn().get().litNanos());
        }

        /** A lone count is a balance result, cylinder flashes, the separator or a prompt, by where it stands. */
        private void group(List<Integer> counts, double gapAfter, boolean first, boolean last) {
            boolean lone = format.sessions().isPresent() && counts.size() == 1;
            if (lone && first && last) {
                codes.put(Segment.BALANCE, Set.of(counts.get(0).toString()));
            } else if (lone && segment == Segment.PRESENT) {
                segment = first && gapAfter > 3 * clock * dark.get(2) ? Segment.RUNNING : Segment.STORED;
            } else if (!lone) {
                Set<String> list = codes.computeIfAbsent(segment, each -> new LinkedHashSet<>());
                String code = counts.size() == places.size() ? text(counts) : "";
                if (format.refusal(code).isEmpty()) {
                    list.add(code);
                } else if (!format.framingCode().equals(Optional.of(code))) {
                    misfit += 1; // no code of this format
                }
            }
        }

        private String text(List<Integer> counts) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < places.size(); i++) {
                text.append(places.get(i).digit(counts.get(i)).orElse("?"));
            }
            return text.toString();
        }

        Reading reading() {
            Map<Segment, List<String>> lists = new EnumMap<>(Segment.class);
            codes.forEach((each, list) -> lists.put(each, List.copyOf(list)));
            return new Reading(
                    Optional.of(new FormatEstimate(format.id(), 1, clock)), lists, List.of(), List.of());
        }
    }
}
