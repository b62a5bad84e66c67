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
        if (!part.role().continuesCode() && !(part.role().sort() == Sort.LOST && goesOn(part))) {
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

    /** Whether lost runs follow each other as closely as digits do. */
    private boolean goesOn(Part part) {
        if (open.isEmpty() || open.get(0).role().sort() != Sort.LOST) {
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
        Role first = open.get(0).role();
        StringBuilder text = new StringBuilder();
        if (first.sort() == Sort.LOST) {
            for (Part part : open) {
                int count = parse.runs().count(part.firstRun());
                text.append(count > 9 ? "?" : Integer.toString(count));
            }
            close(GroupKind.UNREADABLE, first.segment(), text.toString());
            return;
        }
        for (Part part : open) {
            text.append(
                    part.role().sort() == Sort.DIGIT
                            ? parser.digit(part.role(), parse.runs(), part.firstRun(), part.lastRun())
                            : parser.sign(parse.runs(), part.firstRun()));
        }
        close(kindOfCode(text.toString()), first.segment(), text.toString());
    }

    private GroupKind kindOfCode(String text) {
        boolean whole = format.shape() instanceof CodeShape.Spelled spelled
                ? open.size() <= spelled.longest()
                : open.size() == lengths.places();
        if (!whole) {
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
