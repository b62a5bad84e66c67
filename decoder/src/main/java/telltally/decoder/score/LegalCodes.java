package telltally.decoder.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Spelled;
import telltally.simulator.format.FlashFormat;

/** The codes that a format can send among others: not the framing code, nor the one that says there are none. */
record LegalCodes(FlashFormat format) {
    /** Where counting them stops; nobody asks for as many. */
    private static final int ENOUGH = 100_000;

    /** How many there are, or a number above which it does not matter. */
    int count() {
        CodeShape shape = format.shape();
        long all = 1;
        if (shape instanceof Counted counted) {
            for (CodeShape.Place place : counted.places()) {
                all = Math.min(ENOUGH, all * place.counts().size());
            }
        } else if (shape instanceof Spelled spelled) {
            all = 0;
            for (int i = 0; i < spelled.longest() && all < ENOUGH; i++) {
                all = Math.min(ENOUGH, (all + 1) * spelled.table().size());
            }
        }
        return (int) all
                - (format.framingCode().isPresent() ? 1 : 0)
                - (format.passCode().isPresent() ? 1 : 0);
    }

    /**
     * Different codes in any order, every such list equally likely where codes are counted.
     *
     * @param size at most half of {@link #count}, so that there is always another one to be found soon
     */
    List<String> list(int size, Chance chance) {
        if (size > count() / 2) {
            throw new IllegalArgumentException(size + " codes out of " + count());
        }
        List<String> list = new ArrayList<>();
        while (list.size() < size) {
            String code = code(chance);
            boolean pass = format.passCode().filter(code::equals).isPresent();
            if (!pass && format.refusal(code).isEmpty() && !list.contains(code)) {
                list.add(code);
            }
        }
        return list;
    }

    private String code(Chance chance) {
        if (format.shape() instanceof Counted counted) {
            return counted.places().stream()
                    .map(place -> oneOf(List.copyOf(place.counts().keySet()), chance))
                    .collect(Collectors.joining());
        }
        Spelled spelled = (Spelled) format.shape();
        List<String> signs = List.copyOf(spelled.table().keySet());
        return IntStream.rangeClosed(0, chance.below(spelled.longest()))
                .mapToObj(sign -> oneOf(signs, chance))
                .collect(Collectors.joining());
    }

    static <T> T oneOf(List<T> choices, Chance chance) {
        return choices.get(chance.below(choices.size()));
    }
}
