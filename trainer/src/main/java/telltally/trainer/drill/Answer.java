package telltally.trainer.drill;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import telltally.simulator.format.Segment;
import telltally.trainer.lesson.AnswerSheet;

/** What the learner gave. Has a short text that it can be read back from. */
public sealed interface Answer {
    /** What {@link #parse} reads; one line of letters, digits and {@code : @} with blanks between. */
    String text();

    /** No answer at all. */
    record None() implements Answer {
        @Override
        public String text() {
            return "none";
        }
    }

    /** An option, counted from 0. */
    record Chosen(int option) implements Answer {
        @Override
        public String text() {
            return "chosen " + option;
        }
    }

    record Counted(int number) implements Answer {
        @Override
        public String text() {
            return "counted " + number;
        }
    }

    /** Codes in the order written. */
    record Written(List<Entry> entries) implements Answer {
        public Written {
            entries = List.copyOf(entries);
        }

        /** The codes alone, by segment. */
        public AnswerSheet sheet() {
            AnswerSheet sheet = AnswerSheet.empty();
            for (Segment segment : Segment.values()) {
                List<String> codes = entries.stream()
                        .filter(entry -> entry.segment() == segment)
                        .map(Entry::code)
                        .toList();
                sheet = codes.isEmpty() ? sheet : sheet.with(segment, codes);
            }
            return sheet;
        }

        @Override
        public String text() {
            return entries.stream()
                    .map(Entry::text)
                    .collect(Collectors.joining(" ", entries.isEmpty() ? "written" : "written ", ""));
        }
    }

    /**
     * One code.
     *
     * @param code letters and digits
     * @param atMillis when it was finished, from the start of the drill's pulses; at or after their end where it was
     *     written afterwards
     */
    record Entry(Segment segment, String code, long atMillis) {
        public Entry {
            if (!code.matches("[0-9A-Za-z]+")) {
                throw new IllegalArgumentException("a code is letters and digits, not '" + code + "'");
            }
        }

        String text() {
            return segment.key() + ":" + code + "@" + atMillis;
        }

        private static Entry parse(String text) {
            int colon = text.indexOf(':');
            int at = text.indexOf('@');
            if (colon < 0 || at < colon) {
                throw new IllegalArgumentException("a code is written segment:code@milliseconds, not '" + text + "'");
            }
            Segment segment = Arrays.stream(Segment.values())
                    .filter(each -> each.key().equals(text.substring(0, colon)))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no segment is called so: '" + text + "'"));
            return new Entry(segment, text.substring(colon + 1, at), Long.parseLong(text.substring(at + 1)));
        }
    }

    /** @throws IllegalArgumentException if this is the text of no answer */
    static Answer parse(String text) {
        List<String> words = List.of(text.split(" "));
        String first = words.get(0);
        if (first.equals("written")) {
            return new Written(
                    words.subList(1, words.size()).stream().map(Entry::parse).toList());
        }
        if (text.equals("none")) {
            return new None();
        }
        if (words.size() == 2 && (first.equals("chosen") || first.equals("counted"))) {
            int number = Integer.parseInt(words.get(1));
            return first.equals("chosen") ? new Chosen(number) : new Counted(number);
        }
        throw new IllegalArgumentException("no answer is written so: '" + text + "'");
    }
}
