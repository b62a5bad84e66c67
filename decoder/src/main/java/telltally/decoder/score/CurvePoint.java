package telltally.decoder.score;

/**
 * Where a seed set stands on a curve of accuracy against noise.
 *
 * @param family the curve that it belongs to: small letters, figures, hyphens
 * @param strength how strong the noise is; of a family, each set has another one
 * @param unit what the strength is counted in, the same for a whole family, such as {@code share of each length}
 */
public record CurvePoint(String family, double strength, String unit) {}
