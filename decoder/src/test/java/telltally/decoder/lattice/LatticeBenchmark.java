package telltally.decoder.lattice;

import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import telltally.decoder.lattice.PracticeSessions.Spoiler;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;
import telltally.simulator.signal.PulseTrain;

/** How long a session of about 120 flashes takes, and an hour of a wire. */
@State(Scope.Benchmark)
public class LatticeBenchmark {
    private static final int FLASHES = 120;

    @Param({"pair-even", "pair-thrice", "long-short"})
    private String format = "pair-even";

    private final LatticeDecoder decoder = new LatticeDecoder();
    private List<FlashFormat> told = List.of();
    private List<FlashFormat> all = List.of();
    private PulseTrain session = PulseTrain.of(false, 1);
    private PulseTrain hour = PulseTrain.of(false, 1);

    @Setup
    public void prepare() {
        all = FormatCatalog.shipped().all();
        FlashFormat sent = FormatCatalog.shipped().find(format).orElseThrow();
        told = List.of(sent);
        long seed = 1;
        do {
            session = PracticeSessions.session(sent, Spoiler.JITTER, seed++).train();
        } while (Math.abs(session.edgeCount() / 2 - FLASHES) > 8);
        hour = hour(sent);
    }

    @Benchmark
    public Reading toldTheFormat() {
        return decoder.decode(session, told);
    }

    @Benchmark
    public Reading amongSeven() {
        return decoder.decode(session, all);
    }

    @Benchmark
    public Reading anHourOfWire() {
        return decoder.decode(hour, told);
    }

    private static PulseTrain hour(FlashFormat format) {
        List<String> codes = List.of("34", "42", "17", "63", "28", "55", "91", "76");
        Message message = format.sessions().isPresent() ? new Message.KeyOn(codes, codes) : new Message.Codes(codes);
        PulseTrain wire =
                new Encoder(format).encode(message, Pacing.usual().withLoops(4)).wire();
        PulseTrain.Builder hour = PulseTrain.builder();
        while (hour.nowNanos() < 3_600_000_000_000L) {
            wire.intervals().forEach(each -> hour.stay(each.lit(), each.lengthNanos()));
        }
        return hour.build();
    }
}
