package telltally.decoder.plain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import telltally.decoder.reading.Reading;
import telltally.decoder.reading.Reading.Group;
import telltally.decoder.reading.WarningKind;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.signal.PulseTrain;
import telltally.simulator.signal.Seconds;

/** Pulse trains written by hand, and readings told in a few words. */
final class Trains {
    static final List<FlashFormat> SHIPPED = FormatCatalog.shipped().all();

    private Trains() {}

    static FlashFormat shipped(String id) {
        return FormatCatalog.shipped().find(id).orElseThrow();
    }

    /** Seconds, dark and lit in turn, dark first; blanks between, bars and line ends where it helps the eye. */
    static PulseTrain of(String darkAndLitSeconds) {
        PulseTrain.Builder train = PulseTrain.builder();
        boolean lit = false;
        for (String each : darkAndLitSeconds.replace('|', ' ').trim().split("\\s+", -1)) {
            train.stay(lit, Seconds.nanos(new BigDecimal(each)));
            lit = !lit;
        }
        return train.build();
    }

    /**
     * Counted flashes of half a second with half a second between: {@code 3 / 4} is three flashes, the gap between
     * digits of two seconds, four flashes; a number in brackets is a gap of so many seconds: {@code 3 (1.5) 2}.
     */
    static PulseTrain even(String counts) {
        PulseTrain.Builder train = PulseTrain.builder().dark(3_000_000_000L);
        for (String each : counts.trim().split("\\s+", -1)) {
            if (each.equals("/")) {
                train.dark(2_000_000_000L);
            } else if (each.startsWith("(")) {
                train.dark(Seconds.nanos(new BigDecimal(each.substring(1, each.length() - 1))));
            } else {
                int count = Integer.parseInt(each);
                for (int i = 0; i < count; i++) {
                    train.dark(i > 0 ? 500_000_000L : 0).lit(500_000_000L);
                }
            }
        }
        return train.dark(5_000_000_000L).build();
    }

    static Reading read(PulseTrain train, String... formats) {
        List<FlashFormat> candidates = formats.length == 0
                ? SHIPPED
                : Arrays.stream(formats).map(Trains::shipped).toList();
        return new PlainDecoder().decode(train, candidates);
    }

    /** Such as {@code code present 34}. */
    static List<String> told(Reading reading) {
        List<String> groups = new ArrayList<>();
        for (Group group : reading.groups()) {
            groups.add((group.kind().key() + " " + group.segment().key() + " " + group.digits()).trim());
        }
        return groups;
    }

    static List<WarningKind> warned(Reading reading) {
        return reading.warnings().stream().map(Reading.Warning::kind).toList();
    }
}
