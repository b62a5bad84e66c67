package example;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport.Blinking;
import telltally.simulator.format.FlashKind;
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
                .filter(format -> format.shape() instanceof Counted)
                .map(format -> new Attempt(format, train))
                .filter(attempt -> !attempt.codes.isEmpty())
                .min(Comparator.comparingDouble(attempt -> attempt.misfit))
                .map(Attempt::reading)
                .orElseGet(() -> Reading.nothing(new Warning(0, WarningKind.NO_FORMAT, "nothing that can be counted")));
    }

    /** One format tried on one train. */
    private static final class Attempt {
        final FlashFormat format;
        final Map<Segment, Set<String>> codes = new EnumMap<>(Segment.class);
        final List<Interval> flashes;
        double clock = 1;
        double misfit = Double.MAX_VALUE;

        Attempt(FlashFormat format, PulseTrain train) {
            this.format = format;
            this.flashes = flashes(format.restsLit() ? train.inverted() : train);
            estimateClock();
            readGroups();
        }

        /** Gaps of a bouncing contact are closed; light far too short for a flash is left out. */
        private List<Interval> flashes(PulseTrain train) {
            List<Interval> merged = new ArrayList<>();
            for (Interval each : train.intervals()) {
                Interval last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
                if (each.lit() && last != null && each.startNanos() - last.endNanos() < BOUNCE_NANOS) {
                    merged.set(merged.size() - 1, new Interval(true, last.startNanos(), each.endNanos()));
                } else if (each.lit()) {
                    merged.add(each);
                }
            }
            double shortest = 0.62 * lit().min().orElseThrow();
            return merged.stream().filter(each -> each.lengthNanos() >= shortest).toList();
        }

        private LongStream lit() {
            return LongStream.concat(
                    format.flashKinds().stream().mapToLong(FlashKind::onNanos),
                    LongStream.concat(
                            format.leadIn().stream().mapToLong(FlashFormat.LeadIn::litNanos),
                            blinking().stream().mapToLong(Blinking::onNanos)));
        }

        private LongStream dark() {
            FlashFormat.Gaps gaps = format.gaps();
            return LongStream.concat(
                    LongStream.of(
                            gaps.withinDigitNanos(), gaps.betweenDigitsNanos(),
                            gaps.betweenCodesNanos(), gaps.beforeRepeatNanos()),
                    LongStream.concat(
                            format.sessions().stream().mapToLong(FlashFormat.Sessions::aroundSeparatorNanos),
                            blinking().stream().mapToLong(Blinking::offNanos)));
        }

        private Optional<Blinking> blinking() {
            return format.nothingToReport() instanceof Blinking blinking ? Optional.of(blinking) : Optional.empty();
        }

        private void estimateClock() {
            double[] lit = lit().asDoubleStream().toArray();
            double[] dark = dark().asDoubleStream().toArray();
            for (double tried = 0.75; tried < 1.34; tried += 0.01) {
                double sum = 0.1 * Math.abs(Math.log(tried));
                for (int i = 0; i < flashes.size(); i++) {
                    sum += misfit(flashes.get(i).lengthNanos(), lit, tried);
                    sum += i == 0 ? 0 : misfit(gapBefore(i), dark, tried);
                }
                if (sum < misfit) {
                    misfit = sum;
                    clock = tried;
                }
            }
        }

        private static double misfit(double length, double[] nominal, double clock) {
            double least = 1;
            for (double each : nominal) {
                least = Math.min(least, Math.abs(Math.log(length / (each * clock))));
            }
            return least;
        }

        private double gapBefore(int index) {
            return index == flashes.size()
                    ? Double.MAX_VALUE
                    : flashes.get(index).startNanos() - flashes.get(index - 1).endNanos();
        }

        private void readGroups() {
            FlashFormat.Gaps gaps = format.gaps();
            long flash = format.flashKinds().get(0).onNanos();
            int places = ((Counted) format.shape()).places().size();
            double longest = blinking().map(each -> clock * Math.sqrt(each.onNanos() * (double) flash)).orElse(0.0);
            if (flashes.size() > 1 && flashes.get(0).lengthNanos() < longest) {
                codes.put(Segment.CODES, Set.of());
                return;
            }
            double newDigit = clock * Math.sqrt(gaps.withinDigitNanos()
                    * (double) (places > 1 ? gaps.betweenDigitsNanos() : gaps.betweenCodesNanos()));
            double newCode = format.leadIn().isPresent()
                    ? Double.MAX_VALUE
                    : clock * Math.sqrt((places > 1 ? gaps.betweenDigitsNanos() : gaps.withinDigitNanos())
                            * (double) gaps.betweenCodesNanos());
            List<Integer> counts = new ArrayList<>();
            Grammar grammar = new Grammar(places);
            int count = 0;
            for (int i = 0; i < flashes.size(); i++) {
                if (isLeadIn(i)) {
                    continue;
                }
                count++;
                double gap = gapBefore(i + 1);
                boolean announced = i + 1 < flashes.size() && isLeadIn(i + 1);
                if (gap >= newDigit || announced) {
                    counts.add(count);
                    count = 0;
                    if (gap >= newCode || announced || i + 1 == flashes.size()) {
                        grammar.group(List.copyOf(counts), gap, i + 1 == flashes.size());
                        counts.clear();
                    }
                }
            }
        }

        private boolean isLeadIn(int index) {
            return format.leadIn()
                    .map(each -> flashes.get(index).lengthNanos()
                            > clock * Math.sqrt(each.litNanos() * (double) format.flashKinds().get(0).onNanos()))
                    .orElse(false);
        }

        /** What a group is, by where it stands. */
        private final class Grammar {
            private final int places;
            private Segment segment = format.sessions().isPresent() ? Segment.PRESENT : Segment.CODES;
            private boolean first = true;

            Grammar(int places) {
                this.places = places;
            }

            void group(List<Integer> counts, double gapAfter, boolean last) {
                boolean lone = format.sessions().isPresent() && counts.size() == 1;
                if (lone && first && last) {
                    codes.put(Segment.BALANCE, Set.of(counts.get(0).toString()));
                } else if (lone && segment == Segment.PRESENT) {
                    boolean cylinders = first && gapAfter > 3 * clock * format.gaps().betweenCodesNanos();
                    segment = cylinders ? Segment.RUNNING : Segment.STORED;
                } else if (!lone) {
                    code(counts);
                }
                first = false;
            }

            private void code(List<Integer> counts) {
                Set<String> list = codes.computeIfAbsent(segment, each -> new LinkedHashSet<>());
                String code = counts.size() == places ? text(counts) : "";
                if (format.refusal(code).isEmpty()) {
                    list.add(code);
                } else if (!format.framingCode().equals(Optional.of(code))) {
                    misfit += 1; // no code of this format
                }
            }

            private String text(List<Integer> counts) {
                StringBuilder text = new StringBuilder();
                for (int i = 0; i < places; i++) {
                    text.append(((Counted) format.shape()).places().get(i).digit(counts.get(i)).orElse("?"));
                }
                return text.toString();
            }
        }

        Reading reading() {
            Map<Segment, List<String>> lists = new EnumMap<>(Segment.class);
            codes.forEach((segment, list) -> lists.put(segment, List.copyOf(list)));
            return new Reading(
                    Optional.of(new FormatEstimate(format.id(), 1, clock)), lists, List.of(), List.of());
        }
    }
}
