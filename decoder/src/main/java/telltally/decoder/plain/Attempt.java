package telltally.decoder.plain;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;

/**
 * A train read by the rules of one format.
 *
 * @param gain by how many nats the format explains the train better than chance does
 * @param scale of the clock, as a logarithm
 * @param transcript the groups; made for the best attempt only
 */
record Attempt(
        FlashFormat format,
        Flashes flashes,
        double gain,
        double scale,
        Map<Segment, List<String>> codes,
        Supplier<Transcript> transcript) {}
