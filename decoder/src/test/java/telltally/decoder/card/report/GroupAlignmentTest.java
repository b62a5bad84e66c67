package telltally.decoder.card.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import telltally.decoder.reading.Reading.Group;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.format.SentGroup.SentSign;
import telltally.simulator.signal.Interval;

class GroupAlignmentTest {
    private static SentGroup sent(GroupKind kind, String digits) {
        return new SentGroup(
                kind, Segment.CODES, digits, List.of(new SentSign(digits, List.of(new Interval(true, 1, 2)))));
    }

    private static SentGroup sent(String digits) {
        return sent(GroupKind.CODE, digits);
    }

    private static Group read(GroupKind kind, Segment segment, String digits) {
        return new Group(kind, segment, digits, 1, 1, 2, List.of());
    }

    private static Group read(String digits) {
        return read(GroupKind.CODE, Segment.CODES, digits);
    }

    /** Such as {@code 1=1 2!3 4- -5}: alike, read as another, lost, invented. */
    private static String shown(List<SentGroup> sent, List<Group> read) {
        return String.join(
                " ",
                GroupAlignment.of(sent, read).stream()
                        .map(pair -> digits(pair.sent().map(SentGroup::digits))
                                + (pair.alike()
                                        ? "="
                                        : pair.sent().isPresent() && pair.read().isPresent() ? "!" : "")
                                + digits(pair.read().map(Group::digits)))
                        .toList());
    }

    private static String digits(Optional<String> digits) {
        return digits.orElse("-");
    }

    @Test
    void a_lost_group_does_not_shift_all_that_follow() {
        assertThat(shown(List.of(sent("1"), sent("2"), sent("3"), sent("4")), List.of(read("2"), read("3"), read("5"))))
                .isEqualTo("1- 2=2 3=3 4!5");
    }

    @Test
    void an_invented_group_stands_where_it_was_read() {
        assertThat(shown(List.of(sent("1"), sent("2")), List.of(read("9"), read("1"), read("2"))))
                .isEqualTo("-9 1=1 2=2");
        assertThat(shown(List.of(sent("1"), sent("2")), List.of(read("1"), read("9"), read("2"))))
                .isEqualTo("1=1 -9 2=2");
        assertThat(shown(List.of(sent("1"), sent("2")), List.of(read("1"), read("2"), read("9"))))
                .isEqualTo("1=1 2=2 -9");
    }

    @Test
    void where_one_side_is_empty_all_of_the_other_stands_alone() {
        assertThat(shown(List.of(), List.of(read("1"), read("2")))).isEqualTo("-1 -2");
        assertThat(shown(List.of(sent("1"), sent("2")), List.of())).isEqualTo("1- 2-");
    }

    @Test
    void digits_and_segment_must_be_the_same_to_be_alike() {
        assertThat(shown(List.of(sent("1")), List.of(read(GroupKind.CODE, Segment.STORED, "1"))))
                .isEqualTo("1!1");
    }

    @Test
    void another_kind_is_paired_rather_than_both_left_alone() {
        assertThat(shown(List.of(sent(GroupKind.SEPARATOR, "1")), List.of(read("1"))))
                .isEqualTo("1!1");
    }

    @Test
    void a_group_of_the_same_kind_is_preferred_to_one_of_another() {
        assertThat(shown(List.of(sent(GroupKind.SEPARATOR, "1"), sent("2")), List.of(read("3"))))
                .isEqualTo("1- 2!3");
    }

    @Provide
    Arbitrary<String> messages() {
        return Arbitraries.strings().withChars("123s").ofMaxLength(4);
    }

    /** A letter stands for a separator. */
    private static GroupKind kind(char digit) {
        return digit == 's' ? GroupKind.SEPARATOR : GroupKind.CODE;
    }

    @Property(tries = 100)
    void nothing_is_lost_on_the_way_and_no_other_alignment_costs_less(
            @ForAll("messages") String sent, @ForAll("messages") String read) {
        List<SentGroup> sentGroups = sent.chars()
                .mapToObj(each -> sent(kind((char) each), Character.toString(each)))
                .toList();
        List<Group> readGroups = read.chars()
                .mapToObj(each -> read(kind((char) each), Segment.CODES, Character.toString(each)))
                .toList();
        List<GroupAlignment.Pair> pairs = GroupAlignment.of(sentGroups, readGroups);
        assertThat(pairs.stream().flatMap(pair -> pair.sent().stream())).containsExactlyElementsOf(sentGroups);
        assertThat(pairs.stream().flatMap(pair -> pair.read().stream())).containsExactlyElementsOf(readGroups);
        assertThat(pairs.stream().mapToInt(GroupAlignmentTest::cost).sum()).isEqualTo(least(sent, read));
    }

    private static int cost(GroupAlignment.Pair pair) {
        return pair.sent().isPresent() && pair.read().isPresent()
                ? cost(
                        pair.sent().get().digits().charAt(0),
                        pair.read().get().digits().charAt(0))
                : 2;
    }

    /** Two changes for another kind of group and one more; a group alone is two. */
    private static int cost(char sent, char read) {
        return kind(sent) != kind(read) ? 3 : sent == read ? 0 : 1;
    }

    /** By trying every alignment. */
    private static int least(String sent, String read) {
        if (sent.isEmpty() || read.isEmpty()) {
            return 2 * (sent.length() + read.length());
        }
        int together = cost(sent.charAt(0), read.charAt(0)) + least(sent.substring(1), read.substring(1));
        int apart = 2 + Math.min(least(sent.substring(1), read), least(sent, read.substring(1)));
        return Math.min(together, apart);
    }
}
