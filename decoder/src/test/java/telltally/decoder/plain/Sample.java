package telltally.decoder.plain;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Segment;
import telltally.simulator.signal.PulseTrain;

/** A train and what it says. */
record Sample(FlashFormat format, PulseTrain lamp, PulseTrain wire, Map<Segment, List<String>> codes, String told) {
    Sample {
        codes = new EnumMap<>(codes);
    }

    @Override
    public String toString() {
        return format.id() + " " + codes + " " + told;
    }
}
