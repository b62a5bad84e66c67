package telltally.simulator.format;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.CodeShape.Spelled;

/** Any format that ships or is published, with a message that it can send, at any pace. */
final class Sendings extends DomainContextBase {
    record Sending(FlashFormat format, Message message, Pacing pacing) {
        Transmission sent() {
            return new Encoder(format).encode(message, pacing);
        }

        @Override
        public String toString() {
            return format.id() + " " + message + " " + pacing;
        }
    }

    @Provide
    Arbitrary<FlashFormat> formats() {
        return Arbitraries.of(Stream.concat(
                        FormatCatalog.shipped().all().stream(),
                        TestFormats.files().stream().map(TestFormats::parse))
                .toList());
    }

    /** What someone may write where a code belongs: now and then one that can be sent. */
    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(5),
                Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(4));
    }

    @Provide
    Arbitrary<Sending> sendings() {
        Arbitrary<Long> waits = Arbitraries.longs().between(1, 20_000_000_000L);
        Arbitrary<Pacing> pacings = Combinators.combine(
                        waits, waits, Arbitraries.integers().between(1, 3))
                .as(Pacing::new);
        return formats()
                .flatMap(format -> Combinators.combine(messages(format), pacings)
                        .as((message, pacing) -> new Sending(format, message, pacing)));
    }

    private static Arbitrary<? extends Message> messages(FlashFormat format) {
        Arbitrary<List<String>> lists = codes(format)
                .filter(code -> format.refusal(code).isEmpty())
                .list()
                .uniqueElements()
                .ofMaxSize(Math.min(
                        6, Math.min(possibleCodes(format), format.repeats().mostCodes())));
        if (format.sessions().isEmpty()) {
            return lists.map(Message.Codes::new);
        }
        return Arbitraries.oneOf(
                Combinators.combine(lists, lists).as(Message.KeyOn::new),
                Combinators.combine(Arbitraries.of(2, 4, 6, 8, 10, 12), Arbitraries.of(true, false), lists)
                        .as(Message.Running::new),
                Arbitraries.integers()
                        .between(1, format.sessions().get().mostBalanceFlashes())
                        .map(Message.Balance::new));
    }

    /** Codes of the format's shape, built from its table, not from what it refuses. */
    static Arbitrary<String> codes(FlashFormat format) {
        if (format.shape() instanceof Spelled spelled) {
            return Arbitraries.of(List.copyOf(spelled.table().keySet()))
                    .list()
                    .ofMinSize(1)
                    .ofMaxSize(Math.min(8, spelled.longest()))
                    .map(signs -> String.join("", signs));
        }
        List<Arbitrary<String>> digits = ((Counted) format.shape())
                .places().stream().map(Sendings::digits).toList();
        return Combinators.combine(digits).as(each -> String.join("", each));
    }

    private static Arbitrary<String> digits(Place place) {
        return Arbitraries.of(List.copyOf(place.counts().keySet()));
    }

    private static int possibleCodes(FlashFormat format) {
        return format.shape() instanceof Counted counted
                ? counted.places().stream()
                        .mapToInt(place -> place.counts().size())
                        .reduce(1, (left, right) -> left * right)
                : ((Spelled) format.shape()).table().size();
    }
}
