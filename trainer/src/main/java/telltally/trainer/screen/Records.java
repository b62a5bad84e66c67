package telltally.trainer.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import telltally.trainer.logbook.LogbookKeeper;

/**
 * What records need from outside the program.
 *
 * @param now what date and time it is
 * @param zone where the learner is; asked when it is first needed, since looking it up takes its time
 * @param program version of Telltally
 */
public record Records(LogbookKeeper keeper, Supplier<Instant> now, Supplier<ZoneId> zone, String program) {
    LocalDate today() {
        return LocalDate.ofInstant(now.get(), zone.get());
    }
}
