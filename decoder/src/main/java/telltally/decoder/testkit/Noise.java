package telltally.decoder.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ContactBounce;
import telltally.simulator.channel.GhostFlashes;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.ImpairmentChain;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.MissedFlashes;

/**
 * How strongly a recording is spoiled. Strengths in whole percent and milliseconds, which can be read at a glance.
 *
 * @param clockPercent how long everything lasts, 100 where the sender's clock is right
 * @param jitterPercent standard deviation of each length
 * @param missedPercent of flashes that are not seen
 * @param ghostPercent of gaps that get a flash nobody sent
 * @param bounceMillis how long a contact bounces at most
 */
public record Noise(int clockPercent, int jitterPercent, int missedPercent, int ghostPercent, int bounceMillis) {
    private static final int RIGHT_CLOCK = 100;
    private static final int MOST_CONTACTS = 3;
    private static final long MILLISECOND = 1_000_000L;

    public static final Noise NONE = new Noise(RIGHT_CLOCK, 0, 0, 0, 0);

    public Noise {
        if (clockPercent < 10 || clockPercent > 1000) {
            throw new IllegalArgumentException("a clock runs at 10 to 1000 percent, not " + clockPercent);
        }
    }

    /** Evenly drawn up to these strengths, the clock as far to either side; each strength is none in every second. */
    Noise drawn(Chance chance) {
        int off = share(Math.abs(clockPercent - RIGHT_CLOCK), chance);
        return new Noise(
                RIGHT_CLOCK + (chance.happens(0.5) ? off : -off),
                share(jitterPercent, chance),
                share(missedPercent, chance),
                share(ghostPercent, chance),
                share(bounceMillis, chance));
    }

    private static int share(int most, Chance chance) {
        return most > 0 && chance.happens(0.5) ? 1 + chance.below(most) : 0;
    }

    ImpairmentChain chain() {
        List<Impairment> chain = new ArrayList<>();
        chain.add(new ClockScale(clockPercent / 100.0));
        chain.add(new Jitter(jitterPercent / 100.0));
        chain.add(new MissedFlashes(missedPercent / 100.0));
        chain.add(GhostFlashes.ofReflections(ghostPercent / 100.0));
        chain.add(new ContactBounce(bounceMillis * MILLISECOND, MOST_CONTACTS));
        return new ImpairmentChain(chain);
    }

    /** With one kind less, each in turn; then with one kind half as strong, and one step weaker. */
    Stream<Noise> simpler() {
        Stream.Builder<Noise> simpler = Stream.builder();
        int[] strengths = strengths();
        for (int left = 0; left < 3; left++) {
            for (int i = 0; i < strengths.length; i++) {
                int weaker = left == 0 ? 0 : left == 1 ? strengths[i] / 2 : strengths[i] - Integer.signum(strengths[i]);
                if (weaker != strengths[i] && (weaker != 0 || left == 0)) {
                    int[] changed = strengths.clone();
                    changed[i] = weaker;
                    simpler.add(new Noise(RIGHT_CLOCK + changed[0], changed[1], changed[2], changed[3], changed[4]));
                }
            }
        }
        return simpler.build();
    }

    /** Of each kind; 0 where there is none of it, below where the clock is fast. */
    private int[] strengths() {
        return new int[] {clockPercent - RIGHT_CLOCK, jitterPercent, missedPercent, ghostPercent, bounceMillis};
    }

    int kinds() {
        int kinds = 0;
        for (int strength : strengths()) {
            kinds += strength == 0 ? 0 : 1;
        }
        return kinds;
    }

    int sum() {
        int sum = 0;
        for (int strength : strengths()) {
            sum += Math.abs(strength);
        }
        return sum;
    }

    @Override
    public String toString() {
        StringJoiner text = new StringJoiner(", ");
        text.setEmptyValue("nothing spoiled");
        add(text, clockPercent - RIGHT_CLOCK, "clock " + clockPercent + " %");
        add(text, jitterPercent, "jitter " + jitterPercent + " %");
        add(text, missedPercent, "missed flashes " + missedPercent + " %");
        add(text, ghostPercent, "ghost flashes " + ghostPercent + " %");
        add(text, bounceMillis, "bounce " + bounceMillis + " ms");
        return text.toString();
    }

    private static void add(StringJoiner text, int strength, String said) {
        if (strength != 0) {
            text.add(said);
        }
    }
}
