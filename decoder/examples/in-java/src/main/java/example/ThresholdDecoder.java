package example;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import telltally.decoder.reading.Decoder;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.FormatEstimate;
import telltally.decoder.reading.Reading.Warning;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.LeadIn;
import telltally.simulator.format.FlashFormat.NothingToReport.Blinking;
import telltally.simulator.format.FlashKind;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

/** Thresholds halfway between the lengths of a format that it is told; of several, the first that counts flashes. */
public final class ThresholdDecoder implements Decoder {
    private static final double NEVER = 1e18;

    @Override
    public String id() {
        return "threshold-java";
    }

    @Override
    public Reading decode(PulseTrain train, List<FlashFormat> candidates) {
        return candidates.stream()
                .filter(format -> format.shape() instanceof Counted && !format.restsLit())
                .findFirst()
                .map(format -> new Listener(format, (Counted) format.shape()).reading(train))
                .orElseGet(() -> Reading.nothing(new Warning(0, WarningKind.NO_FORMAT, "nothing that can be counted")));
    }

    private static final class Listener {
        private final FlashFormat format;
        private final Counted shape;
        private final double flash;
        private final double blink;
        private final double leadIn;
        private final Map<Segment, List<String>> codes = new EnumMap<>(Segment.class);
        private Segment segment;
        private int groups;

        Listener(FlashFormat format, Counted shape) {
            this.format = format;
            this.shape = shape;
            flash = format.flashKinds().stream().mapToDouble(FlashKind::onNanos).min().orElseThrow();
            blink = format.nothingToReport() instanceof Blinking blinking ? blinking.onNanos() : 0;
            leadIn = format.leadIn().map(LeadIn::litNanos).map(lit -> halfway(flash, lit)).orElse(NEVER);
            segment = format.segments().get(0);
        }

        /** By their ratio. */
        private static double halfway(double shorter, double longer) {
            return Math.sqrt(shorter * longer);
        }

        Reading reading(PulseTrain train) {
            List<Interval> flashes = flashes(train);
            if (!flashes.isEmpty() && flashes.get(0).lengthNanos() < halfway(blink, flash)) {
                codes.put(segment, List.of()); // nothing to report
            } else {
                readCodes(flashes);
            }
            Optional<FormatEstimate> estimate = codes.isEmpty() ? Optional.empty() : Optional.of(new FormatEstimate(format.id(), 1, 1));
            return new Reading(estimate, codes, List.of(), List.of());
        }

        /** Gaps of a bouncing contact are closed; light far too short for a flash is left out. */
        private List<Interval> flashes(PulseTrain train) {
            List<Interval> flashes = new ArrayList<>();
            for (Interval each : train.intervals()) {
                int last = flashes.size() - 1;
                if (each.lit() && last >= 0 && each.startNanos() - flashes.get(last).endNanos() < 15_000_000) {
                    flashes.set(last, new Interval(true, flashes.get(last).startNanos(), each.endNanos()));
                } else if (each.lit()) {
                    flashes.add(each);
                }
            }
            flashes.removeIf(each -> each.lengthNanos() < 0.62 * (blink > 0 ? blink : flash));
            return flashes;
        }

        /** Flashes are counted into digits, digits into codes; a lead-in ends a code as the end of the train does. */
        private void readCodes(List<Interval> flashes) {
            boolean oneDigit = shape.places().size() == 1;
            double betweenCodes = leadIn < NEVER ? NEVER : format.gaps().betweenCodesNanos();
            double betweenDigits = oneDigit ? betweenCodes : format.gaps().betweenDigitsNanos();
            double newDigit = halfway(format.gaps().withinDigitNanos(), betweenDigits);
            double newCode = oneDigit ? newDigit : halfway(betweenDigits, betweenCodes);
            List<Integer> counts = new ArrayList<>();
            int count = 0;
            for (int i = 0; i < flashes.size(); i++) {
                Interval flash = flashes.get(i);
                if (flash.lengthNanos() > leadIn) {
                    continue;
                }
                boolean last = i + 1 == flashes.size() || flashes.get(i + 1).lengthNanos() > leadIn;
                double gap = last ? NEVER : flashes.get(i + 1).startNanos() - flash.endNanos();
                count++;
                if (gap > newDigit) {
                    counts.add(count);
                    count = 0;
                }
                if (gap > newCode) {
                    group(counts, gap);
                    counts.clear();
                }
            }
        }

        /** A lone count is a balance result, cylinder flashes, the separator or a prompt, by where it stands. */
        private void group(List<Integer> counts, double gap) {
            boolean lone = format.sessions().isPresent() && counts.size() == 1;
            boolean first = groups++ == 0;
            if (lone && first && gap == NEVER) {
                codes.put(Segment.BALANCE, List.of(counts.get(0).toString()));
            } else if (lone && segment == Segment.PRESENT) {
                boolean running = first && gap > 3 * format.gaps().betweenCodesNanos();
                segment = running ? Segment.RUNNING : Segment.STORED;
            } else if (!lone) {
                List<String> list = codes.computeIfAbsent(segment, each -> new ArrayList<>());
                String code = code(counts);
                if (format.refusal(code).isEmpty() && !list.contains(code)) {
                    list.add(code);
                }
            }
        }

        private String code(List<Integer> counts) {
            StringBuilder code = new StringBuilder();
            for (int i = 0; i < counts.size() && i < shape.places().size(); i++) {
                code.append(shape.places().get(i).digit(counts.get(i)).orElse("?"));
            }
            return counts.size() == shape.places().size() ? code.toString() : "";
        }
    }
}
