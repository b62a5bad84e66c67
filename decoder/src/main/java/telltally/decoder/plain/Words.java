package telltally.decoder.plain;

import java.util.ArrayList;
import java.util.List;
import telltally.decoder.plain.Parse.Part;
import telltally.decoder.plain.Role.Sort;
import telltally.simulator.format.CodeShape;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;

/** Puts the parts of a parse together to words. */
final class Words {
    private final FlashFormat format;
    private final Lengths lengths;
    private final Parser parser;
    private final Parse parse;
    private final List<Word> words = new ArrayList<>();
    private final List<Part> open = new ArrayList<>();

    private Words(FlashFormat format, Lengths lengths, Parser parser, Parse parse) {
        this.format = format;
        this.lengths = lengths;
        this.parser = parser;
        this.parse = parse;
    }

    static List<Word> of(FlashFormat format, Lengths lengths, Parser parser, Parse parse) {
        Words each = new Words(format, lengths, parser, parse);
        for (int i = 0; i < parse.parts().size(); i++) {
            each.take(i);
        }
        each.close();
        return each.words;
    }

    private void take(int index) {
        Part part = parse.parts().get(index);
        if (!part.role().continuesCode() && !goesOnUnreadable(part)) {
            close();
        }
        open.add(part);
        switch (part.role().sort()) {
            case DIGIT, FIRST_SIGN, LATER_SIGN, LOST -> {}
            case SEPARATOR -> lone(GroupKind.SEPARATOR);
            case CYLINDERS -> lone(GroupKind.CYLINDERS);
            case PROMPT -> lone(GroupKind.PROMPT);
            case BALANCE -> lone(GroupKind.BALANCE);
            case STEADY -> close(GroupKind.STEADY, nextSegment(index), "");
            case LEAD_IN -> close(GroupKind.STEADY, part.role().segment(), "");
            case START -> throw new IllegalStateException("no run is before everything");
        }
    }

    /** Whether the gap before a part is one inside a word, and the word has lost runs in it. */
    private boolean goesOnUnreadable(Part part) {
        boolean lostWord = open.stream().anyMatch(each -> each.role().sort() == Sort.LOST);
        boolean ofWord =
                part.role().sort() == Sort.LOST || (lostWord && part.role().sort() == Sort.FIRST_SIGN);
        boolean wordIsWhole = open.size() == lengths.places() && !lostWord;
        if (open.isEmpty() || !ofWord || wordIsWhole) {
            return false;
        }
        double gap = parse.runs().gapBefore(parse.runs().first(part.firstRun()));
        return gap < (lengths.betweenDigits() + lengths.betweenCodes()) / 2;
    }

    /** A bulb check belongs to what follows it. */
    private Segment nextSegment(int index) {
        int last = parse.parts().size() - 1;
        int next = Math.min(last, index + 1);
        while (next < last && parse.parts().get(next).role().sort() == Sort.STEADY) {
            next++;
        }
        return parse.parts().get(next).role().segment();
    }

    private void lone(GroupKind kind) {
        Part part = open.get(0);
        close(kind, part.role().segment(), Integer.toString(parse.runs().count(part.firstRun())));
    }

    private void close() {
        if (open.isEmpty()) {
            return;
        }
        StringBuilder text = new StringBuilder();
        open.forEach(part -> text.append(text(part)));
        close(kindOfCode(text.toString()), open.get(0).role().segment(), text.toString());
    }

    /** Of a lost run the number of its flashes. */
    private String text(Part part) {
        int count = parse.runs().count(part.firstRun());
        return switch (part.role().sort()) {
            case DIGIT -> parser.digit(part.role(), parse.runs(), part.firstRun(), part.lastRun());
            case FIRST_SIGN, LATER_SIGN -> parser.sign(parse.runs(), part.firstRun());
            default -> count > 9 ? "?" : Integer.toString(count);
        };
    }

    private GroupKind kindOfCode(String text) {
        boolean whole = format.shape() instanceof CodeShape.Spelled spelled
                ? open.size() <= spelled.longest()
                : open.size() == lengths.places();
        if (!whole || open.stream().anyMatch(part -> part.role().sort() == Sort.LOST)) {
            return GroupKind.UNREADABLE;
        }
        return format.framingCode().filter(text::equals).isPresent() ? GroupKind.SEPARATOR : GroupKind.CODE;
    }

    private void close(GroupKind kind, Segment segment, String digits) {
        words.add(new Word(kind, segment, digits, cost(), open));
        open.clear();
    }

    private double cost() {
        Runs runs = parse.runs();
        int after = open.get(open.size() - 1).lastRun() + 1;
        double cost = after < runs.size() ? gapCost(after) : 0;
        for (Part part : open) {
            for (int run = part.firstRun(); run <= part.lastRun(); run++) {
                cost += runs.cost(run) + gapCost(run) + (run > part.firstRun() ? Cost.MISSED : 0);
            }
        }
        return cost;
    }

    private double gapCost(int run) {
        Runs runs = parse.runs();
        return run == 0 ? 0 : parse.gapBefore(run).cost(runs.gapBefore(runs.first(run)));
    }
}
