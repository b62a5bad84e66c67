package telltally.decoder.lattice;

import static telltally.decoder.lattice.Sendings.sign;

import java.util.ArrayList;
import java.util.List;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** One segment made by hand, and what stands beside it: flashes as dark and lit milliseconds, and the groups found. */
final class HandMadeSegment {
    private final FormatModel model;
    private final List<Integer> lengths = new ArrayList<>(List.of(3000));
    private final List<Found> all = new ArrayList<>();
    final List<Found> own = new ArrayList<>();
    private int flashes;
    private FormatTrial trial;

    HandMadeSegment(FormatModel model) {
        this.model = model;
    }

    /** A sending of these counts, with a gap of so many milliseconds between them. */
    HandMadeSegment sent(int first, int gap, int second, Guess... signs) {
        return group(GroupKind.CODE, false, new int[] {first, second}, gap, signs);
    }

    HandMadeSegment sent(String code) {
        int first = code.charAt(0) - '0';
        int second = code.charAt(1) - '0';
        return sent(first, 2000, second, sure(first), sure(second));
    }

    /** The recording began after the first digit of it. */
    HandMadeSegment begunBefore(int second) {
        return group(GroupKind.CODE, true, new int[] {second}, 0, sure(second));
    }

    /** A code that blocks before it and after it made one think of, and of which there is no flash. */
    HandMadeSegment unseen(String code) {
        Guess[] signs = {sure(code.charAt(0) - '0'), sure(code.charAt(1) - '0')};
        return group(GroupKind.CODE, false, new int[0], 0, signs);
    }

    /** A group of one flash that is no code, with so much dark on either side. */
    HandMadeSegment other(GroupKind kind, int lit, int dark) {
        if (flashes > 0) {
            dark(dark);
        }
        group(kind, false, new int[] {1}, 0, sure(1));
        lengths.set(lengths.size() - 2, lit);
        return dark(dark);
    }

    private HandMadeSegment dark(int millis) {
        lengths.set(lengths.size() - 1, millis);
        return this;
    }

    private static Guess sure(int count) {
        return sign(Integer.toString(count), 1.0);
    }

    private HandMadeSegment group(GroupKind kind, boolean begunBefore, int[] counts, int gap, Guess... signs) {
        Found found = new Found(kind, flashes, begunBefore ? 1 : 0, begunBefore, false);
        for (int place = 0; place < counts.length; place++) {
            for (int i = 1; i <= counts[place]; i++) {
                flashes++;
                lengths.add(500);
                lengths.add(i < counts[place] ? 500 : place + 1 < counts.length ? gap : 4000);
            }
        }
        found.lastFlash = flashes - 1;
        found.signs.addAll(List.of(signs));
        all.add(found);
        if (kind == GroupKind.CODE) {
            own.add(found);
        }
        return this;
    }

    /** The groups of codes, of which all but the last are said to end one flash before they do. */
    Region settled(boolean cut) {
        own.subList(0, own.size() - 1).forEach(found -> found.lastFlash--);
        Region region = region(cut);
        trial = trial();
        region.settle(trial, cut);
        return region;
    }

    Region region(boolean midway) {
        return new Region(Segment.STORED, own, new ListStructure(model, own, midway, false));
    }

    /** The lists weighed for the flashes from one to before another, with what stands beside them. */
    ListWeigher weigher(Region region, int from, int to, boolean separatorBefore, boolean separatorAfter) {
        return new ListWeigher(
                model,
                trial.flashes.slice(from, to),
                TwoDigitFormat.CHANNEL,
                region.structure,
                separatorBefore,
                separatorAfter,
                new LatticeStock());
    }

    private FormatTrial trial() {
        FormatTrial trial = new FormatTrial(
                model,
                Sendings.flashes(lengths),
                List.of(new CoarseClock.Fit(1, 0)),
                KnownNoise.NOTHING,
                new LatticeStock());
        trial.run();
        trial.read();
        trial.channel = TwoDigitFormat.CHANNEL;
        trial.finder().groups.clear();
        trial.finder().groups.addAll(all);
        return trial;
    }
}
