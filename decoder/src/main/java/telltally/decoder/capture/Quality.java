package telltally.decoder.capture;

/**
 * How well two levels stood apart.
 *
 * @param darkLevel typical value while dark, in the unit of the recording, slow changes taken out
 * @param litLevel typical value while lit
 * @param noise standard deviation about these after filtering, by the median absolute deviation
 * @param contrast distance of the levels over the noise, at most 1000
 * @param filterSamples over how many samples was averaged; 1 is not at all
 * @param edgeErrorNanos standard error of the instant of a sudden edge, from sampling and noise
 */
public record Quality(
        double darkLevel, double litLevel, double noise, double contrast, int filterSamples, long edgeErrorNanos) {}
