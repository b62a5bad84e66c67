package telltally.decoder.lattice;

import java.util.OptionalDouble;

/**
 * What is known of the noise of a recording beforehand; what is empty is fitted to it.
 *
 * @param clockScale how much longer than nominal everything is
 * @param jitter standard deviation of each length relative to it
 * @param missed probability that a flash is not seen
 * @param ghost probability that a gap holds a flash that was not sent
 */
public record KnownNoise(
        OptionalDouble clockScale, OptionalDouble jitter, OptionalDouble missed, OptionalDouble ghost) {
    /** Nothing is known. */
    public static final KnownNoise NOTHING = new KnownNoise(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    Channel in(Channel fitted) {
        return new Channel(
                clockScale.orElse(fitted.scale()),
                fitted.biasSeconds(),
                jitter.orElse(fitted.jitter()),
                fitted.blurSeconds(),
                missed.orElse(fitted.missed()),
                ghost.orElse(fitted.ghost()));
    }
}
