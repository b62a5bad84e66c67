package telltally.decoder.plain;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.domains.DomainContextBase;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FlashFormat.NothingToReport;
import telltally.simulator.format.Message;
import telltally.simulator.format.Pacing;

/** Everything that the shipped formats can send: any legal codes, any loops, short and long waits. */
final class SentArbitraries extends DomainContextBase {
    private static final int LONGEST_LIST = 15;

    @Provide
    Arbitrary<Sent> sent() {
        return Arbitraries.of(Trains.SHIPPED)
                .flatMap(format -> Combinators.combine(messages(format), pacings())
                        .as((message, pacing) -> new Sent(format, message, pacing)));
    }

    private static Arbitrary<Pacing> pacings() {
        // From a blink of an eye to minutes before the first flash; a second after the last is little, but happens.
        Arbitrary<Long> lead = Arbitraries.longs().between(1_000_000L, 60_000_000_000L);
        Arbitrary<Long> tail = Arbitraries.longs().between(300_000_000L, 20_000_000_000L);
        return Combinators.combine(lead, tail, Arbitraries.integers().between(1, 4))
                .as(Pacing::new);
    }

    private static Arbitrary<Message> messages(FlashFormat format) {
        if (format.sessions().isEmpty()) {
            boolean nothing =
                    format.framingCode().isPresent() || format.nothingToReport() instanceof NothingToReport.Blinking;
            return codes(format, nothing ? 0 : 1).map(Message.Codes::new);
        }
        int mostBalance = format.sessions().get().mostBalanceFlashes();
        Arbitrary<Message> keyOn =
                Combinators.combine(codes(format, 0), codes(format, 0)).as(Message.KeyOn::new);
        Arbitrary<Message> running = Combinators.combine(
                        Arbitraries.integers().between(1, 6), Arbitraries.of(true, false), codes(format, 0))
                .as((half, prompt, codes) -> new Message.Running(2 * half, prompt, codes));
        Arbitrary<Message> balance =
                Arbitraries.integers().between(1, mostBalance).map(Message.Balance::new);
        return Arbitraries.frequencyOf(Tuple.of(4, keyOn), Tuple.of(2, running), Tuple.of(1, balance));
    }

    private static Arbitrary<List<String>> codes(FlashFormat format, int fewest) {
        Counted shape = (Counted) format.shape();
        Arbitrary<String> code = Combinators.combine(
                        shape.places().stream().map(SentArbitraries::digits).toList())
                .as(digits -> String.join("", digits))
                .filter(each -> format.refusal(each).isEmpty());
        return code.list()
                .uniqueElements()
                .ofMinSize(fewest)
                .ofMaxSize(Math.min(LONGEST_LIST, format.repeats().mostCodes()));
    }

    private static Arbitrary<String> digits(Place place) {
        return Arbitraries.of(List.copyOf(place.counts().keySet()));
    }
}
