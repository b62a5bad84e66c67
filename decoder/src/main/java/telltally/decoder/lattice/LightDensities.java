package telltally.decoder.lattice;

import java.util.List;
import telltally.decoder.lattice.Automaton.Light;

/** How well one flash that was seen fits each light that may have been sent, through one channel at a time. */
final class LightDensities {
    /** A bulb check, against steady light of any length. */
    private static final double BULB_CHECK_SECONDS = 100;

    private static final double BULB_CHECK = 7;
    /** Logarithm of the ratio of the longest to the shortest flash that there may be. */
    static final double ANY_LOG_RANGE = 13.8;

    private final List<Light> lights;
    private final double[] mean;
    private final double[] deviation;
    private double seenShare;
    /** By light: the density of the flash looked at last, and that it was seen. */
    final double[] density;

    LightDensities(List<Light> lights) {
        this.lights = lights;
        mean = new double[lights.size()];
        deviation = new double[lights.size()];
        density = new double[lights.size()];
    }

    /** Sees everything through this channel from now on. */
    void through(Channel channel) {
        seenShare = 1 - channel.missed();
        for (int i = 0; i < mean.length; i++) {
            double seconds = lights.get(i).seconds();
            mean[i] = seconds * channel.scale() + channel.biasSeconds();
            deviation[i] = channel.deviation(seconds * seconds);
        }
    }

    /** @param cut whether the brink of the recording cuts the flash, so that it may have been longer */
    void lookAt(double seconds, boolean cut) {
        for (int i = 0; i < density.length; i++) {
            density[i] = of(i, seconds, cut);
        }
    }

    /** The density of one light, and that it was seen. */
    double of(int light, double seconds, boolean cut) {
        return seenShare * seen(light, seconds, cut);
    }

    private double seen(int light, double seconds, boolean cut) {
        Light sent = lights.get(light);
        if (sent.broad()) {
            boolean fits = seconds <= sent.mostSeconds() && (cut || seconds >= sent.seconds());
            double share = sent.mostSeconds() < BULB_CHECK_SECONDS ? BULB_CHECK : 1;
            return fits ? 1 / (seconds * ANY_LOG_RANGE) * share : 0;
        }
        if (sent.seconds() == 0) {
            return 0;
        }
        double z = (seconds - mean[light]) / deviation[light];
        return cut ? Noise.beyond(z) : Noise.density(z) / deviation[light] + Pass.smear(seconds, mean[light]);
    }
}
