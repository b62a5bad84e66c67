package telltally.simulator.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import telltally.simulator.format.Sendings.Sending;
import telltally.simulator.signal.Interval;
import telltally.simulator.signal.PulseTrain;

@Domain(Sendings.class)
class EncoderProperties {
    private static final int TRIES = 400;

    @Property(tries = TRIES)
    void the_groups_cover_exactly_the_flashes_of_the_lamp(@ForAll Sending sending) {
        Transmission sent = sending.sent();

        List<Interval> told = sent.groups().stream()
                .flatMap(group -> group.signs().stream())
                .flatMap(sign -> sign.flashes().stream())
                .toList();
        assertThat(told).isEqualTo(flashes(sending, sent.lamp()));
    }

    @Property(tries = TRIES)
    void a_group_is_made_of_the_flashes_that_its_digits_say(@ForAll Sending sending) {
        FlashFormat format = sending.format();
        for (SentGroup group : sending.sent().groups()) {
            boolean framing =
                    format.framingCode().filter(group.digits()::equals).isPresent();
            if (group.kind() == GroupKind.CODE || framing) {
                assertThat(lengths(group))
                        .isEqualTo(lengths(format.shape().signs(group.digits()).orElseThrow()));
            } else if (group.kind() != GroupKind.STEADY) {
                assertThat(lengths(group))
                        .isEqualTo(List.of(Collections.nCopies(
                                Integer.parseInt(group.digits()),
                                format.sessions().orElseThrow().cylinderFlash().onNanos())));
            }
        }
    }

    private static List<List<Long>> lengths(SentGroup group) {
        return group.signs().stream()
                .map(sign -> sign.flashes().stream().map(Interval::lengthNanos).toList())
                .toList();
    }

    private static List<List<Long>> lengths(List<CodeShape.Sign> signs) {
        return signs.stream()
                .map(sign -> sign.flashes().stream().map(FlashKind::onNanos).toList())
                .toList();
    }

    @Property(tries = TRIES)
    void the_truth_is_what_the_message_says_and_what_the_groups_say(@ForAll Sending sending) {
        Transmission sent = sending.sent();

        sent.codes().forEach((segment, codes) -> {
            List<String> sentOnce = sent.groups().stream()
                    .filter(group -> group.segment() == segment)
                    .filter(group -> group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE)
                    .map(SentGroup::digits)
                    .distinct()
                    .toList();
            assertThat(codes).isEqualTo(sentOnce).isEqualTo(expected(sending, segment));
        });
    }

    private static List<String> expected(Sending sending, Segment segment) {
        Message message = sending.message();
        if (message instanceof Message.Balance balance) {
            return List.of(Integer.toString(balance.flashes()));
        }
        List<String> list = message instanceof Message.Codes codes
                ? codes.codes()
                : message instanceof Message.Running running
                        ? running.codes()
                        : segment == Segment.PRESENT
                                ? ((Message.KeyOn) message).present()
                                : ((Message.KeyOn) message).stored();
        return list.isEmpty() ? sending.format().passCode().stream().toList() : list;
    }

    @Property(tries = TRIES)
    void a_code_is_sent_as_often_as_the_format_and_the_pacing_say(@ForAll Sending sending) {
        FlashFormat.Repeats repeats = sending.format().repeats();
        int times =
                repeats.eachCodeTimes() * (repeats.loops() ? sending.pacing().loops() : repeats.listTimes());

        Transmission sent = sending.sent();
        sent.codes()
                .forEach((segment, codes) -> codes.forEach(code -> assertThat(sent.groups().stream()
                                .filter(group -> group.kind() == GroupKind.CODE)
                                .filter(group -> group.segment() == segment)
                                .filter(group -> group.digits().equals(code)))
                        .hasSize(segment == Segment.BALANCE ? 0 : times)));
    }

    @Property(tries = TRIES)
    void a_train_is_at_rest_at_both_ends_as_long_as_the_pacing_says(@ForAll Sending sending) {
        Transmission sent = sending.sent();

        List<Interval> all = sent.lamp().intervals();
        Interval tail = all.get(all.size() - 1);
        assertThat(sent.lamp().litAtStart()).isEqualTo(sending.format().restsLit());
        assertThat(tail.lit()).isEqualTo(sending.format().restsLit());
        assertThat(all.get(0).lengthNanos())
                .isGreaterThanOrEqualTo(sending.pacing().leadNanos());
        assertThat(tail.lengthNanos()).isGreaterThanOrEqualTo(sending.pacing().tailNanos());
    }

    @Property(tries = TRIES)
    void the_wire_has_the_lamps_flashes_and_before_each_list_the_same_a_hundred_times_faster(@ForAll Sending sending) {
        Transmission sent = sending.sent();
        Set<Interval> onLamp = new HashSet<>(flashes(sending, sent.lamp()));
        List<Interval> wire = flashes(sending, sent.wire());

        assertThat(wire).containsAll(onLamp);
        Iterator<Interval> beyond =
                wire.stream().filter(each -> !onLamp.contains(each)).iterator();
        if (sending.format().burst().isPresent()) {
            sent.codes().keySet().forEach(segment -> assertFast(beyond, list(sent, segment)));
        }
        assertThat(beyond).isExhausted();
    }

    /** Instants are compared from the end of the list, which on the wire lies one second before the slow one begins. */
    private static void assertFast(Iterator<Interval> fast, List<Interval> slow) {
        long slowEndNanos = slow.get(slow.size() - 1).endNanos();
        long fastEndNanos = slow.get(0).startNanos() - 1_000_000_000L;
        for (Interval each : slow) {
            Interval burst = fast.next();
            assertThat((fastEndNanos - burst.startNanos()) * 100).isEqualTo(slowEndNanos - each.startNanos());
            assertThat((fastEndNanos - burst.endNanos()) * 100).isEqualTo(slowEndNanos - each.endNanos());
        }
    }

    /** The flashes of a segment's codes, without separator, cylinder flashes and prompt. */
    private static List<Interval> list(Transmission sent, Segment segment) {
        return sent.groups().stream()
                .filter(group -> group.segment() == segment)
                .filter(group -> group.kind() == GroupKind.CODE || group.kind() == GroupKind.BALANCE)
                .flatMap(group -> group.signs().stream())
                .flatMap(sign -> sign.flashes().stream())
                .toList();
    }

    @Property(tries = TRIES)
    void any_text_is_sent_or_refused_with_a_reason(@ForAll FlashFormat format, @ForAll String text) {
        Message message = format.sessions().isPresent()
                ? new Message.Running(4, false, List.of(text))
                : new Message.Codes(List.of(text));

        if (message.refusal(format).isEmpty()) {
            Transmission sent = new Encoder(format).encode(message, Pacing.usual());
            assertThat(sent.groups()).anyMatch(group -> group.digits().equals(text));
        } else {
            assertThat(message.refusal(format).get()).isNotBlank();
            assertThat(format.refusal(text)).isPresent();
            assertThatThrownBy(() -> new Encoder(format).encode(message, Pacing.usual()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(message.refusal(format).get());
        }
    }

    private static List<Interval> flashes(Sending sending, PulseTrain train) {
        return train.intervals().stream()
                .filter(each -> each.lit() != sending.format().restsLit())
                .toList();
    }
}
