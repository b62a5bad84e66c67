package telltally.decoder.score;

import java.util.Optional;
import telltally.simulator.channel.CameraFrames;
import telltally.simulator.channel.ClockDrift;
import telltally.simulator.channel.ClockScale;
import telltally.simulator.channel.ContactBounce;
import telltally.simulator.channel.Finger;
import telltally.simulator.channel.GhostFlashes;
import telltally.simulator.channel.Impairment;
import telltally.simulator.channel.Jitter;
import telltally.simulator.channel.LooseContact;
import telltally.simulator.channel.TapAlong;

/**
 * Noise through which a message ought still to be read.
 *
 * @param strength 0 changes nothing
 */
record HuntNoise(Kind kind, double strength) {
    private static final double WEAKER = 0.7;

    /** What a hunt tries, and how strong it may be; common practice, no source. */
    enum Kind {
        CLOCK("clock", -0.18, 0.22, 0.01),
        DRIFT("drift a minute", -0.02, 0.02, 0.002),
        JITTER("jitter", 0, 0.07, 0.005),
        BOUNCE("bounce in seconds", 0, 0.015, 0.001),
        GHOSTS("ghosts in each gap", 0, 0.03, 0.002),
        LOOSE("losses of contact a second", 0, 0.05, 0.005),
        FRAMES("seconds a frame", 0, 0.1, 0.01),
        TAPS("spread of taps in seconds", 0, 0.04, 0.005);

        private final String words;
        private final double least;
        private final double most;
        private final double negligible;

        Kind(String words, double least, double most, double negligible) {
            this.words = words;
            this.least = least;
            this.most = most;
            this.negligible = negligible;
        }

        HuntNoise between(double unit) {
            return new HuntNoise(this, least + (most - least) * unit);
        }
    }

    Impairment impairment() {
        return switch (kind) {
            case CLOCK -> new ClockScale(1 + strength);
            case DRIFT -> new ClockDrift(strength);
            case JITTER -> new Jitter(strength);
            case BOUNCE -> new ContactBounce(nanos(), 5);
            case GHOSTS -> GhostFlashes.ofReflections(strength);
            case LOOSE -> new LooseContact(strength, 50_000_000);
            // At least a camera of a thousand frames a second.
            case FRAMES -> {
                double period = Math.max(0.001, strength);
                yield new CameraFrames(1 / period, (long) (period * 0.5e9), 0.5);
            }
            case TAPS -> new TapAlong(new Finger(200_000_000, nanos(), 0, 0));
        };
    }

    private long nanos() {
        return StrictMath.round(strength * 1e9);
    }

    /** Empty where it would be next to nothing. */
    Optional<HuntNoise> weaker() {
        double weaker = strength * WEAKER;
        return Math.abs(weaker) < kind.negligible ? Optional.empty() : Optional.of(new HuntNoise(kind, weaker));
    }

    @Override
    public String toString() {
        return kind.words + " " + Math.round(strength * 1e4) / 1e4;
    }
}
