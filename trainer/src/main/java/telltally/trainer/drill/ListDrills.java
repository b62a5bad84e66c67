package telltally.trainer.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import telltally.simulator.channel.LateStart;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.recording.Truth;
import telltally.simulator.signal.PulseTrain;
import telltally.trainer.drill.Question.When;

/** Drills on a list of codes. */
record ListDrills(FormatCatalog formats) {
    private static final double WIDEST_CODE_GAP = 2;
    private static final double WIDEST_REPEAT_GAP = 3;

    Drill writeAtOnce(Order order) {
        return plain(order, order.ease().count(2, 5), When.AT_ONCE);
    }

    Drill listInTheHead(Order order) {
        return plain(order, order.ease().count(2, 5), When.AFTERWARDS);
    }

    /** Sometimes only how many codes there were is asked. */
    Drill endOfACode(Order order) {
        FlashFormat format = alone(order, List.of("pair-even", "pair-loop", "pair-thrice"))
                .sent(1, 1)
                .timed(order.ease().clock(), 1, order.ease().between(WIDEST_CODE_GAP, 1))
                .format();
        int most = order.ease().count(3, 5);
        List<String> codes = draw(order, format, CodeDraw.digit(order.chance("count"), 2, most));
        return order.chance("kind").happens(order.level().value() <= 2 ? 0.5 : 0.2)
                ? number(order, format, codes, 1, "drill.task-how-many-codes")
                : written(order, format, codes, 1, When.ANY_TIME);
    }

    /** The list comes twice. In some formats only the first code, coming again, tells where it ended. */
    Drill endOfTheList(Order order) {
        FlashFormat shipped = formats.find(order.oneOf("format", List.of("pair-loop", "pair-loop", "pair-even")))
                .orElseThrow();
        double nominal = (double) Math.max(
                        shipped.gaps().beforeRepeatNanos(), shipped.gaps().betweenCodesNanos())
                / shipped.gaps().betweenCodesNanos();
        FlashFormat format = new FormatVariant(shipped)
                .listAlone()
                .sent(1, 2)
                .eased(order.ease().clock(), 1)
                .repeatGap(order.ease().between(WIDEST_REPEAT_GAP, nominal))
                .format();
        List<String> codes = draw(
                order,
                format,
                CodeDraw.digit(order.chance("count"), 2, order.ease().count(2, 4)));
        return order.chance("kind").happens(0.25)
                ? number(order, format, codes, 2, "drill.task-how-many-different")
                : written(order, format, codes, 2, When.ANY_TIME);
    }

    Drill interruption(Order order) {
        Drill quiet = plain(order, order.ease().count(1, 3), When.ANY_TIME);
        List<SentGroup> groups = quiet.truth().groups();
        SentGroup group = groups.get(order.chance("group").below(groups.size()));
        long lengthNanos = Math.round(order.ease().between(2.5, 5) * 1e9);
        // Easy ones come between the digits, hard ones while a digit is being counted.
        boolean within = order.chance("place").happens(order.level().share());
        SentGroup.SentSign sign = group.signs().get(0);
        long fromNanos = within
                ? sign.flashes().get(sign.flashes().size() / 2).startNanos()
                : sign.flashes().get(sign.flashes().size() - 1).endNanos();
        long toNanos = Math.min(fromNanos + lengthNanos, quiet.lampNanos());
        return quiet.interruptedBy(new Interruption(fromNanos, toNanos, asked(order)));
    }

    private static Said asked(Order order) {
        int kind = 1 + order.chance("asked").below(4);
        int first = 11 + order.chance("first").below(80);
        int second = 3 + order.chance("second").below(7);
        return Said.of("drill.asked-" + kind, first, second);
    }

    Drill fromTheMiddle(Order order) {
        FlashFormat format = new FormatVariant(
                        formats.find(order.oneOf("format", List.of("pair-loop", "pair-loop", "long-short")))
                                .orElseThrow())
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        List<String> codes = draw(order, format, order.ease().count(2, 4));
        Drill whole = written(order, format, codes, 3, When.ANY_TIME);
        long lostNanos = joinedNanos(order, whole.truth().groups(), codes.size());
        PulseTrain seen = new LateStart(lostNanos).applyTo(whole.pulses(), order.chance("channel"));
        return new Drill(
                whole.skill(),
                whole.level(),
                whole.item(),
                whole.seed(),
                format,
                seenAfter(whole.truth(), lostNanos),
                seen,
                whole.display(),
                whole.observer(),
                whole.question(),
                whole.interruption());
    }

    /** Easy ones begin in the gap before a code, hard ones somewhere within one. */
    private static long joinedNanos(Order order, List<SentGroup> groups, int codes) {
        int place = order.chance("joined").below(codes);
        SentGroup group = groups.get(place);
        if (!order.chance("place").happens(order.level().share())) {
            return group.startNanos() - 1_000_000_000L;
        }
        double share = order.chance("share").between(0.1, 0.9);
        return group.startNanos() + (long) (share * (group.endNanos() - group.startNanos()));
    }

    /** The codes in the order in which each is first seen whole. */
    private static Truth seenAfter(Truth truth, long lostNanos) {
        List<SentGroup> groups = truth.groups().stream()
                .filter(group -> group.startNanos() >= lostNanos)
                .map(group -> group.later(-lostNanos))
                .toList();
        List<String> codes = groups.stream()
                .filter(group -> group.kind() == GroupKind.CODE)
                .map(SentGroup::digits)
                .distinct()
                .toList();
        return new Truth(truth.formatId(), Map.of(Segment.CODES, codes), groups);
    }

    private Drill plain(Order order, int count, When when) {
        FlashFormat format = alone(order, List.of("pair-even", "pair-loop"))
                .sent(1, order.level().full() ? 2 : 1)
                .eased(order.ease().clock(), order.ease().gapStretch())
                .format();
        return written(order, format, draw(order, format, count), 1, when);
    }

    private FormatVariant alone(Order order, List<String> ids) {
        return new FormatVariant(formats.find(order.oneOf("format", ids)).orElseThrow()).listAlone();
    }

    private static List<String> draw(Order order, FlashFormat format, int count) {
        return new ArrayList<>(new CodeDraw(format, 2, order.ease().mostFlashes()).codes(order.chance("codes"), count));
    }

    private static Drill written(Order order, FlashFormat format, List<String> codes, int loops, When when) {
        Question question = new Question.Write(order.task(), List.of(Segment.CODES), when);
        return order.drill(format, order.list(format, codes, loops), question);
    }

    private static Drill number(Order order, FlashFormat format, List<String> codes, int loops, String task) {
        return order.drill(format, order.list(format, codes, loops), new Question.HowMany(Said.of(task), codes.size()));
    }
}
