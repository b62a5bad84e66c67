package telltally.decoder.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import telltally.simulator.chance.Chance;
import telltally.simulator.format.CodeShape.Counted;
import telltally.simulator.format.CodeShape.Place;
import telltally.simulator.format.CodeShape.Spelled;
import telltally.simulator.format.Encoder;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.Message;
import telltally.simulator.format.Message.Balance;
import telltally.simulator.format.Message.Codes;
import telltally.simulator.format.Message.KeyOn;
import telltally.simulator.format.Message.Running;
import telltally.simulator.format.Pacing;

/** What one format can send: drawn at random, and made simpler step by step. */
public final class Messages {
    private static final int MOST_HALVES = 6;
    private static final int TRIES = 1000;

    private final FlashFormat format;

    public Messages(FlashFormat format) {
        this.format = format;
    }

    /** @param mostCodes in each list */
    public Message drawn(int mostCodes, Chance chance) {
        if (format.sessions().isEmpty()) {
            return new Codes(list(mostCodes, chance));
        }
        return switch (chance.below(4)) {
            case 0 -> new Running(2 * (1 + chance.below(MOST_HALVES)), chance.happens(0.5), list(mostCodes, chance));
            case 1 -> new Balance(1 + chance.below(format.sessions().get().mostBalanceFlashes()));
            default -> new KeyOn(list(mostCodes, chance), list(mostCodes, chance));
        };
    }

    private List<String> list(int mostCodes, Chance chance) {
        int size = chance.below(Math.min(mostCodes, format.repeats().mostCodes()) + 1);
        List<String> list = new ArrayList<>();
        // A format may have fewer codes than are asked for.
        for (int tries = 0; list.size() < size && tries < TRIES; tries++) {
            String code = code(chance);
            if (!list.contains(code) && format.refusal(code).isEmpty()) {
                list.add(code);
            }
        }
        return list;
    }

    private String code(Chance chance) {
        if (format.shape() instanceof Counted counted) {
            return counted.places().stream()
                    .map(place -> oneOf(place.counts().keySet().stream().toList(), chance))
                    .collect(Collectors.joining());
        }
        Spelled spelled = (Spelled) format.shape();
        List<String> signs = List.copyOf(spelled.table().keySet());
        return IntStream.rangeClosed(0, chance.below(spelled.longest()))
                .mapToObj(sign -> oneOf(signs, chance))
                .collect(Collectors.joining());
    }

    private static String oneOf(List<String> choices, Chance chance) {
        return choices.get(chance.below(choices.size()));
    }

    /**
     * Simpler messages that the format can send, the greatest steps first: without a whole list, without one code; with
     * a digit of as few flashes as there can be, with one of a flash less; fewer cylinders, no prompt.
     */
    public Stream<Message> simpler(Message message) {
        Stream<Message> simpler;
        if (message instanceof KeyOn keyOn) {
            simpler = Stream.concat(
                    simplerLists(keyOn.present()).map(list -> new KeyOn(list, keyOn.stored())),
                    simplerLists(keyOn.stored()).map(list -> new KeyOn(keyOn.present(), list)));
        } else if (message instanceof Running running) {
            Stream<Message> shorter =
                    simplerLists(running.codes()).map(list -> new Running(running.cylinders(), running.prompt(), list));
            simpler = Stream.of(
                            shorter,
                            lower(2, running.cylinders(), 2)
                                    .mapToObj(count -> new Running(count, running.prompt(), running.codes())),
                            Stream.of(new Running(running.cylinders(), false, running.codes())))
                    .flatMap(each -> each);
        } else if (message instanceof Balance balance) {
            simpler = lower(1, balance.flashes(), 1).mapToObj(Balance::new);
        } else {
            simpler = simplerLists(((Codes) message).codes()).map(Codes::new);
        }
        return simpler.filter(
                each -> !each.equals(message) && each.refusal(format).isEmpty());
    }

    /** The least, and one step below what it is now. */
    private static IntStream lower(int least, int now, int step) {
        return IntStream.of(least, now - step).distinct().filter(count -> count >= least && count < now);
    }

    private Stream<List<String>> simplerLists(List<String> list) {
        Stream<List<String>> none = list.size() > 1 ? Stream.of(List.of()) : Stream.empty();
        Stream<List<String>> fewer = IntStream.range(0, list.size()).mapToObj(left -> without(list, left));
        Stream<List<String>> smaller = IntStream.range(0, list.size())
                .boxed()
                .flatMap(at -> simplerCodes(list.get(at)).map(code -> with(list, at, code)));
        return Stream.of(none, fewer, smaller).flatMap(each -> each);
    }

    private static List<String> without(List<String> list, int left) {
        List<String> fewer = new ArrayList<>(list);
        fewer.remove(left);
        return fewer;
    }

    private static List<String> with(List<String> list, int at, String code) {
        List<String> changed = new ArrayList<>(list);
        changed.set(at, code);
        return changed;
    }

    private Stream<String> simplerCodes(String code) {
        if (format.shape() instanceof Counted counted) {
            List<Place> places = counted.places();
            if (places.size() == 1) {
                return fewerFlashes(places.get(0).counts(), code);
            }
            return IntStream.range(0, places.size())
                    .boxed()
                    .flatMap(at -> fewerFlashes(places.get(at).counts(), code.substring(at, at + 1))
                            .map(digit -> code.substring(0, at) + digit + code.substring(at + 1)));
        }
        return IntStream.range(0, code.length()).mapToObj(at -> code.substring(0, at) + code.substring(at + 1));
    }

    /** The digit of fewest flashes, and the next one below. */
    private static Stream<String> fewerFlashes(Map<String, Integer> counts, String digit) {
        int now = counts.getOrDefault(digit, 0);
        List<String> fewer = counts.entrySet().stream()
                .filter(each -> each.getValue() < now)
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
        return fewer.isEmpty()
                ? Stream.empty()
                : Stream.of(fewer.get(0), fewer.get(fewer.size() - 1)).distinct();
    }

    /** How many codes it lists; a balance result is one. */
    public int codes(Message message) {
        if (message instanceof KeyOn keyOn) {
            return keyOn.present().size() + keyOn.stored().size();
        }
        if (message instanceof Running running) {
            return running.codes().size();
        }
        return message instanceof Codes list ? list.codes().size() : 1;
    }

    /** How many flashes it is sent in, repeats and all. */
    public int flashes(Message message) {
        return new Encoder(format).encode(message, Pacing.usual()).lamp().edgeCount() / 2;
    }

    /** In one line. */
    public static String text(Message message) {
        if (message instanceof KeyOn keyOn) {
            return "present " + text(keyOn.present()) + ", stored " + text(keyOn.stored());
        }
        if (message instanceof Running running) {
            return "running " + text(running.codes()) + " after " + running.cylinders() / 2 + " cylinder flashes"
                    + (running.prompt() ? " and a prompt" : "");
        }
        return message instanceof Codes list
                ? "codes " + text(list.codes())
                : "balance " + ((Balance) message).flashes();
    }

    private static String text(List<String> codes) {
        return codes.isEmpty() ? "none" : String.join(" ", codes);
    }
}
