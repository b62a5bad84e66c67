package telltally.decoder.score;

import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import telltally.simulator.chance.Chance;
import telltally.simulator.document.ProblemException;

/** Draws a few digests in a Java machine of its own, and says what kind of machine that is. */
final class DigestsElsewhere {
    private DigestsElsewhere() {}

    /**
     * Prints five lines (Java version, locale, time zone, {@link #mathBits}, {@link #noiseBits}), then the digests.
     *
     * @param args how many blocks of each set, then the files of the sets
     */
    public static void main(String[] args) throws ProblemException {
        System.out.println(Runtime.version().feature());
        System.out.println(Locale.getDefault().toLanguageTag());
        System.out.println(TimeZone.getDefault().getID());
        System.out.println(mathBits());
        System.out.println(noiseBits());
        int blocks = Integer.parseInt(args[0]);
        for (int i = 1; i < args.length; i++) {
            SeedSet set = SeedSetReader.read(Path.of(args[i]));
            for (SeedBlock block : set.blocks().subList(0, blocks)) {
                System.out.println(CaseDigest.of(set, block));
            }
        }
    }

    /** A number that differs between machines whose {@code Math}, unlike {@code StrictMath}, rounds differently. */
    static long mathBits() {
        long bits = 0;
        for (int i = 1; i <= 20_000; i++) {
            double x = i / 777.0;
            for (double y : new double[] {Math.exp(x), Math.log(x), Math.pow(x, 1.7), Math.sin(x), Math.cos(x)}) {
                bits = 31 * bits + Double.doubleToLongBits(y);
            }
        }
        return bits;
    }

    /**
     * Every bit of a long row of draws. Digests alone would not do: instants are rounded to nanoseconds, and a last bit
     * that came out differently hardly ever shows in them.
     */
    static long noiseBits() {
        Chance chance = Chance.of(42);
        long bits = 0;
        for (int i = 0; i < 20_000; i++) {
            bits = 31 * bits + Double.doubleToLongBits(chance.nextNormal());
            bits = 31 * bits + Double.doubleToLongBits(chance.nextExponential());
        }
        return bits;
    }
}
