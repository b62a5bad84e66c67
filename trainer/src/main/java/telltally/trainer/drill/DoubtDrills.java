package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.GhostFlashes;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.MissedFlashes;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.drill.Question.Option;

/**
 * Codes of which one flash was not seen, or among which one was seen that nobody sent. Only the rhythm tells, so it
 * happens inside a digit; often nothing happens, and then nothing is to be found.
 */
record DoubtDrills(FormatCatalog formats) {
    private static final int TWO_DIGITS_FROM_LEVEL = 5;
    private static final int FEWEST_FLASHES = 3;
    private static final double SHARE_WITH_NOTHING = 0.35;
    private static final int MOST_ATTEMPTS = 10_000;
    private static final long SHORTEST_GHOST_NANOS = 40_000_000L;

    Drill missedFlash(Order order) {
        return drill(order, false);
    }

    Drill ghostFlash(Order order) {
        return drill(order, true);
    }

    private Drill drill(Order order, boolean ghost) {
        int places = order.level().value() < TWO_DIGITS_FROM_LEVEL ? 1 : 2;
        int most = Math.max(FEWEST_FLASHES, order.ease().mostFlashes());
        FlashFormat format = new FormatVariant(formats.find("pair-even").orElseThrow())
                .listAlone()
                .places(places, most)
                .sent(1, order.level().full() ? 2 : 1)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        Chance digits = order.chance("digits");
        StringBuilder code = new StringBuilder();
        for (int place = 0; place < places; place++) {
            code.append(CodeDraw.digit(digits, FEWEST_FLASHES, most));
        }
        Tape tape = order.list(format, List.of(code.toString()), 1);
        List<SentGroup> groups = tape.truth(format).groups();
        boolean happens = !order.chance("nothing").happens(SHARE_WITH_NOTHING);
        PulseTrain sent = tape.pulses();
        PulseTrain seen = happens ? spoiled(order, sent, groups, ghost) : sent;
        Doubt doubt = new Doubt(order, code.toString(), happens ? place(groups, sent, seen) : 0, ghost, happens);
        Drill drill = order.drill(format, tape, new Question.Choose(order.task(), doubt.options()));
        return drill.seenAs(seen);
    }

    /** Watched again and again, until one flash and no more went wrong where the rhythm can tell. */
    private static PulseTrain spoiled(Order order, PulseTrain sent, List<SentGroup> groups, boolean ghost) {
        double once = 1.0 / sent.edgeCount();
        long longestNanos = Math.round(order.ease().between(80e6, 150e6));
        Impairment impairment =
                ghost ? new GhostFlashes(once, SHORTEST_GHOST_NANOS, longestNanos) : new MissedFlashes(2 * once);
        for (int attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
            PulseTrain seen = impairment.applyTo(sent, order.chance("channel").stream(attempt));
            Optional<Interval> odd = odd(sent, seen);
            if (odd.isPresent() && inside(groups, odd.get()) >= 0) {
                return seen;
            }
        }
        throw new IllegalStateException("nothing went wrong in " + MOST_ATTEMPTS + " attempts: " + order);
    }

    /** The one flash that only one of the two has; empty where there is none or more than one. */
    private static Optional<Interval> odd(PulseTrain sent, PulseTrain seen) {
        List<Interval> odd = new ArrayList<>(flashes(sent));
        odd.removeAll(flashes(seen));
        List<Interval> added = new ArrayList<>(flashes(seen));
        added.removeAll(flashes(sent));
        odd.addAll(added);
        return odd.size() == 1 ? Optional.of(odd.get(0)) : Optional.empty();
    }

    private static List<Interval> flashes(PulseTrain train) {
        return train.intervals().stream().filter(Interval::lit).toList();
    }

    private static int place(List<SentGroup> groups, PulseTrain sent, PulseTrain seen) {
        return odd(sent, seen).map(flash -> inside(groups, flash)).orElse(0);
    }

    /** The place of the digit in which something lies between the first and the last flash; -1 where in none. */
    private static int inside(List<SentGroup> groups, Interval flash) {
        for (SentGroup group : groups) {
            for (int place = 0; place < group.signs().size(); place++) {
                SentSign sign = group.signs().get(place);
                List<Interval> all = sign.flashes();
                if (flash.startNanos() > all.get(0).startNanos()
                        && flash.endNanos() < all.get(all.size() - 1).endNanos()) {
                    return place;
                }
            }
        }
        return -1;
    }

    /**
     * What may be believed about a code.
     *
     * @param place of the digit that the doubt is about
     * @param happened whether anything went wrong at all
     */
    private record Doubt(Order order, String code, int place, boolean ghost, boolean happened) {
        List<Option> options() {
            int flashes = Integer.parseInt(code.substring(place, place + 1));
            int seen = happened ? flashes + (ghost ? 1 : -1) : flashes;
            int corrected = ghost ? seen - 1 : seen + 1;
            int other = ghost ? corrected - 1 : corrected + 1;
            List<Option> options = new ArrayList<>();
            options.add(option("all-seen", seen, !happened));
            options.add(option(ghost ? "one-ghost" : "one-missed", corrected, happened));
            // Judged right, counted wrong by one.
            options.add(miscounted(
                    happened ? (ghost ? "one-ghost" : "one-missed") : "all-seen", happened ? other : corrected));
            options.add(option(
                    happened ? "all-seen" : (ghost ? "one-ghost" : "one-missed"), happened ? corrected : seen, false));
            Collections.swap(options, 0, order.chance("order").below(options.size()));
            return options;
        }

        private Option option(String judged, int flashes, boolean right) {
            List<Credit> says =
                    right ? List.of(order.credit(true), order.digit(sent(), true)) : List.of(order.credit(false));
            return new Option(Said.of("drill.option-" + judged, written(flashes)), says);
        }

        private Option miscounted(String judged, int flashes) {
            return new Option(
                    Said.of("drill.option-" + judged, written(flashes)),
                    List.of(order.credit(true), order.digit(sent(), false)));
        }

        private int sent() {
            return Integer.parseInt(code.substring(place, place + 1));
        }

        private String written(int flashes) {
            return code.substring(0, place) + flashes + code.substring(place + 1);
        }
    }
}
