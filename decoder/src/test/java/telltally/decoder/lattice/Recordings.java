package telltally.decoder.lattice;

import telltally.simulator.document.ProblemException;
import telltally.simulator.document.TextFile;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.FormatReader;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/** Recordings written by hand, and the formats that they are read in. */
final class Recordings {
    private Recordings() {}

    /** Dark and lit stretches in seconds by turns, dark first; 0 for a recording that begins lit. */
    static PulseTrain train(String darkAndLitSeconds) {
        PulseTrain.Builder pulses = PulseTrain.builder();
        boolean lit = false;
        for (String each : darkAndLitSeconds.trim().split("\\s+", -1)) {
            pulses.stay(lit, Seconds.parseNanos(each));
            lit = !lit;
        }
        return pulses.build();
    }

    /** The same, with every stretch from a millisecond on. */
    static Flashes flashes(String darkAndLitSeconds) {
        return Flashes.of(train(darkAndLitSeconds), true, 1_000_000, 1_000_000, 1000);
    }

    /** A recording read whole in one format, before its lists are settled. */
    static FormatTrial trial(FlashFormat format, String darkAndLitSeconds) {
        FormatModel model = new FormatModel(format);
        Flashes flashes = Flashes.of(
                train(darkAndLitSeconds), !format.restsLit(), model.leastLitNanos, model.leastDarkNanos, 1000);
        FormatTrial trial = new FormatTrial(
                model, flashes, model.clock.fits(new Lengths(flashes)), KnownNoise.NOTHING, new LatticeStock());
        trial.run();
        trial.read();
        return trial;
    }

    static FlashFormat shipped(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    /** A format of which the members after its title are given. */
    static FlashFormat format(String id, String members) {
        return read("{\"schema\": \"telltally/format/1\", \"id\": \"%s\", \"title\": \"%s\", %s}"
                .formatted(id, id, members));
    }

    /** A format of which the whole file is given. */
    static FlashFormat read(String file) {
        try {
            return FormatReader.read(new TextFile("format.json", file));
        } catch (ProblemException e) {
            throw new IllegalStateException(e);
        }
    }
}
