package telltally.decoder.lattice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static telltally.decoder.lattice.Sendings.TWO_DIGITS;
import static telltally.decoder.lattice.Sendings.clean;
import static telltally.decoder.lattice.Sendings.flashes;
import static telltally.decoder.lattice.Sendings.sign;
import static telltally.decoder.lattice.Sendings.structure;
import static telltally.decoder.lattice.Sendings.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.ListWeigher.Seen;
import telltally.decoder.lattice.SentList.Plan;
import telltally.decoder.reading.Reading.Alternative;
import telltally.simulator.format.GroupKind;

/** What the weights of lists come to, and what is made of them, for flashes and groups made by hand. */
class ListWeigherTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Channel CHANNEL = TwoDigitFormat.CHANNEL;
    private static final FormatModel TWICE =
            Sendings.format(TWO_DIGITS + "\"list\": {\"list_times\": 2, \"most_codes\": 2}");
    private static final FormatModel LOOPING =
            Sendings.format(TWO_DIGITS + "\"list\": {\"loops\": true}, \"framing_code\": \"12\"");
    private static final FormatModel SESSIONS = Sendings.shipped("pair-even");

    private final LatticeStock stock = new LatticeStock();

    private static List<Integer> withTail(List<Integer> lengths, int tail) {
        List<Integer> cut = new ArrayList<>(lengths.subList(0, lengths.size() - 1));
        cut.add(tail);
        return cut;
    }

    private ListWeigher weigher(FormatModel model, List<Integer> lengths, ListStructure structure) {
        return new ListWeigher(model, flashes(lengths), CHANNEL, structure, false, false, stock);
    }

    /** The list's density times how usual so long a list of these many codes is. */
    private static double log(FormatModel model, List<Integer> lengths, Plan plan, int codesThereAre, String... codes) {
        SentList sent = new SentList(model, plan, List.of(codes));
        double density =
                RowPass.run(sent, flashes(lengths), CHANNEL, new Lattice()).logSum();
        return density + codes.length * (-0.15 - Math.log(codesThereAre));
    }

    private static Plan open(Integer... loops) {
        return new Plan(false, false, false, false, List.of(loops), true, true);
    }

    private static double sum(Map<List<String>, Double> logs, String code) {
        return logs.entrySet().stream()
                .filter(each -> each.getKey().contains(code))
                .mapToDouble(each -> Math.exp(each.getValue()))
                .sum();
    }

    private static double sum(Map<List<String>, Double> logs) {
        return logs.values().stream().mapToDouble(Math::exp).sum();
    }

    @Nested
    class TheWeightOfAList {
        @Test
        void is_its_density_by_how_usual_a_list_of_such_codes_is() {
            List<Integer> lengths = clean("34", "21", "34", "21");
            Map<List<String>, Double> logs = weigher(TWICE, lengths, structure(TWICE, "34", "21", "34", "21"))
                    .logWeights();
            assertThat(logs.get(List.of("34", "21"))).isCloseTo(log(TWICE, lengths, open(2), 81, "34", "21"), EXACT);
            assertThat(logs.get(List.of("34"))).isCloseTo(log(TWICE, lengths, open(2), 81, "34"), EXACT);
        }

        @Test
        void counts_the_choices_of_each_sign_where_codes_are_spelled() {
            FormatModel spelled = Sendings.format("""
                    "flashes_s": {".": 0.5, "-": 1.5},
                    "code": {"signs": {"S": "...", "O": "---", "T": "-", "E": "."}, "most_signs": 5},
                    "gaps": {"within_digit_s": 0.5, "between_digits_s": 1.5, "between_codes_s": 4.0},
                    "list": {"list_times": 2}
                    """);
            List<Integer> lengths = List.of(3000, 1500, 1500, 500, 1500, 500, 4000, 1500, 1500, 500, 1500, 500, 4000);
            Guess[] tee = new Guess[3];
            for (int i = 0; i < 3; i++) {
                tee[i] = Guess.ofShares(4);
                tee[i].add("TEE".substring(i, i + 1), 1);
            }
            ListWeigher weigher = weigher(spelled, lengths, structure(spelled, whole(tee), whole(tee)));
            assertThat(weigher.logWeights().get(List.of("TEE")))
                    .isCloseTo(log(spelled, lengths, open(2), 4 * 4 * 4, "TEE"), EXACT);
        }

        @Test
        void counts_a_place_once_however_long_its_text_is() {
            FormatModel count = Sendings.shipped("count-loop");
            List<Integer> lengths = new ArrayList<>(List.of(3000));
            for (int i = 0; i < 12; i++) {
                lengths.addAll(List.of(300, i < 11 ? 300 : 3000));
            }
            Guess twelve = Guess.ofShares(15);
            twelve.add("12", 1);
            ListWeigher weigher = weigher(count, lengths, structure(count, whole(twelve)));
            assertThat(weigher.logWeights().get(List.of("12")))
                    .isCloseTo(log(count, lengths, open(1), 15, "12"), EXACT);
        }

        @Test
        void takes_a_loop_for_as_many_lists_as_there_is_room_for() {
            // Five blocks: five lists of one code; two of two and a part; two of three, less a code, and one to spare.
            String[] sent = {"34", "21", "51", "34", "21"};
            List<Integer> lengths = clean(sent);
            Map<List<String>, Double> logs =
                    weigher(LOOPING, lengths, structure(LOOPING, sent)).logWeights();
            assertThat(logs.get(List.of("34", "21", "51")))
                    .isCloseTo(log(LOOPING, lengths, open(3), 81, "34", "21", "51"), EXACT);
            assertThat(logs.get(List.of("34", "21"))).isEqualTo(Double.NEGATIVE_INFINITY);
            String[] two = {"34", "21", "34", "21", "34"};
            assertThat(weigher(LOOPING, clean(two), structure(LOOPING, two))
                            .logWeights()
                            .get(List.of("34", "21")))
                    .isCloseTo(log(LOOPING, clean(two), open(4), 81, "34", "21"), EXACT);
            String[] one = {"34", "34", "34"};
            assertThat(weigher(LOOPING, clean(one), structure(LOOPING, one))
                            .logWeights()
                            .get(List.of("34")))
                    .isCloseTo(log(LOOPING, clean(one), open(3), 81, "34"), EXACT);
        }

        @Test
        void takes_each_stretch_between_frames_for_itself() {
            String[] sent = {"12", "34", "34", "12", "34", "12"};
            List<Integer> lengths = clean(sent);
            Plan framed = new Plan(false, false, true, true, List.of(2, 1), true, true);
            assertThat(weigher(LOOPING, lengths, structure(LOOPING, sent))
                            .logWeights()
                            .get(List.of("34")))
                    .isCloseTo(log(LOOPING, lengths, framed, 81, "34"), EXACT);
            String[] openFirst = {"34", "12", "34"};
            Plan between = new Plan(false, false, false, false, List.of(1, 1), true, true);
            assertThat(weigher(LOOPING, clean(openFirst), structure(LOOPING, openFirst))
                            .logWeights()
                            .get(List.of("34")))
                    .isCloseTo(log(LOOPING, clean(openFirst), between, 81, "34"), EXACT);
        }

        @Test
        void takes_the_recording_for_whole_where_a_separator_stands() {
            // A separator, 34 twice, a separator.
            List<Integer> inside = clean("34", "34");
            List<Integer> lengths = new ArrayList<>(List.of(3000, 500, 6000));
            lengths.addAll(withTail(inside.subList(1, inside.size()), 6000));
            lengths.addAll(List.of(500, 3000));
            ListStructure structure = structure(SESSIONS, "34", "34");
            ListWeigher both = new ListWeigher(SESSIONS, flashes(lengths), CHANNEL, structure, true, true, stock);
            Plan closed = new Plan(true, true, false, false, List.of(2), false, false);
            assertThat(both.logWeights().get(List.of("34"))).isCloseTo(log(SESSIONS, lengths, closed, 81, "34"), EXACT);
            List<Integer> first = lengths.subList(0, lengths.size() - 2);
            ListWeigher before = new ListWeigher(SESSIONS, flashes(first), CHANNEL, structure, true, false, stock);
            Plan openEnd = new Plan(true, false, false, false, List.of(2), false, true);
            assertThat(before.logWeights().get(List.of("34")))
                    .isCloseTo(log(SESSIONS, first, openEnd, 81, "34"), EXACT);
            List<Integer> last = new ArrayList<>(lengths.subList(2, lengths.size()));
            ListWeigher after = new ListWeigher(SESSIONS, flashes(last), CHANNEL, structure, false, true, stock);
            Plan openStart = new Plan(false, true, false, false, List.of(2), true, false);
            assertThat(after.logWeights().get(List.of("34")))
                    .isCloseTo(log(SESSIONS, last, openStart, 81, "34"), EXACT);
        }
    }

    @Test
    void lists_that_cannot_have_been_sent_explain_nothing() {
        ListWeigher weigher = weigher(TWICE, clean("77", "77"), structure(TWICE, "21", "21"));
        assertThat(weigher.explains()).isFalse();
        assertThat(weigher.groups()).isEmpty();
        assertThat(weigher.logWeights().values()).containsOnly(Double.NEGATIVE_INFINITY);
        assertThatThrownBy(weigher::codes).isInstanceOf(NullPointerException.class);
    }

    @Nested
    class OfACodeCutByTheEnd {
        /** Whether the last digit is two or more cannot be told, for the recording ends before a third flash could come. */
        private final List<Integer> lengths = withTail(clean("34", "22"), 300);

        private final Guess two = sign("2", 0.4, "3", 0.3, "4", 0.2, "1", 0.1);
        private final ListWeigher weigher =
                weigher(LOOPING, lengths, structure(LOOPING, whole("34"), whole(sign("2", 1.0), two)));

        @Test
        void the_probability_is_the_share_of_all_lists_that_hold_it() {
            Map<List<String>, Double> logs = weigher.logWeights();
            for (String code : List.of("34", "22", "23", "24", "99")) {
                assertThat(weigher.probability(code)).isCloseTo(sum(logs, code) / sum(logs), within(1e-12));
            }
            assertThat(weigher.probability("34")).isBetween(0.9, 1.0);
            assertThat(weigher.probability("22")).isBetween(0.9, 0.99);
            assertThat(weigher.probability("99")).isZero();
        }

        @Test
        void alternatives_are_what_other_lists_as_long_have_in_its_place_the_likeliest_first() {
            Map<List<String>, Double> logs = weigher.logWeights();
            String code = weigher.codes().get(1);
            List<Alternative> alternatives = weigher.alternatives(code);
            assertThat(alternatives)
                    .extracting(Alternative::digits)
                    .contains("24")
                    .doesNotContain(code, "34");
            for (Alternative each : alternatives) {
                double weight = logs.entrySet().stream()
                        .filter(list -> list.getKey().size() == 2
                                && list.getKey().get(1).equals(each.digits()))
                        .mapToDouble(list -> Math.exp(list.getValue()))
                        .sum();
                assertThat(each.probability()).isCloseTo(weight / sum(logs), within(1e-12));
                assertThat(each.probability()).isGreaterThan(1e-6);
            }
            assertThat(alternatives)
                    .isSortedAccordingTo((one, other) -> Double.compare(other.probability(), one.probability()));
            assertThat(alternatives).hasSizeGreaterThan(1);
        }

        @Test
        void a_code_that_is_not_in_the_list_has_no_alternatives() {
            assertThat(weigher.alternatives("99")).isEmpty();
        }

        @Test
        void the_first_code_of_the_list_has_alternatives_as_well_as_any() {
            Guess three = sign("3", 0.6, "4", 0.4);
            List<Integer> begun = new ArrayList<>(clean("34"));
            begun.set(0, 300);
            ListWeigher first = weigher(LOOPING, begun, structure(LOOPING, whole(three, sign("4", 1.0))));
            assertThat(first.codes()).containsExactly("34");
            assertThat(first.alternatives("34")).extracting(Alternative::digits).containsExactly("44");
            assertThat(first.alternatives("34").get(0).probability()).isCloseTo(first.probability("44"), within(1e-12));
        }
    }

    /** The density of hundreds of lengths in seconds is a number of hundreds of digits. */
    @Test
    void of_a_long_recording_probabilities_are_shares_too() {
        String[] sent = new String[15];
        for (int i = 0; i < sent.length; i++) {
            sent[i] = i % 2 == 0 ? "99" : "98";
        }
        ListWeigher weigher = weigher(LOOPING, clean(sent), structure(LOOPING, sent));
        Map<List<String>, Double> logs = weigher.logWeights();
        double best = logs.get(List.of("99", "98"));
        assertThat(best).isGreaterThan(400);
        // It was cut within the list, or begun in one that goes the other way round.
        double turned = Math.exp(logs.get(List.of("98", "99")) - best);
        assertThat(turned).isBetween(1e-3, 1.0);
        assertThat(weigher.probability("99")).isCloseTo(1, within(1e-12));
        assertThat(weigher.alternatives("99")).extracting(Alternative::digits).containsExactly("98");
        assertThat(weigher.alternatives("99").get(0).probability()).isCloseTo(turned / (1 + turned), within(1e-9));
    }

    @Nested
    class TheGroupsOfTheBestList {
        @Test
        void are_its_codes_from_their_first_flash_to_their_last() {
            ListWeigher weigher =
                    weigher(TWICE, clean("12", "31", "12", "31"), structure(TWICE, "12", "31", "12", "31"));
            assertThat(weigher.codes()).containsExactly("12", "31");
            assertThat(weigher.groups())
                    .containsExactly(
                            new Seen(GroupKind.CODE, "12", 0, 2),
                            new Seen(GroupKind.CODE, "31", 3, 6),
                            new Seen(GroupKind.CODE, "12", 7, 9),
                            new Seen(GroupKind.CODE, "31", 10, 13));
        }

        @Test
        void are_frames_too() {
            ListWeigher weigher = weigher(LOOPING, clean("12", "11", "12"), structure(LOOPING, "12", "11", "12"));
            assertThat(weigher.groups())
                    .containsExactly(
                            new Seen(GroupKind.SEPARATOR, "12", 0, 2),
                            new Seen(GroupKind.CODE, "11", 3, 4),
                            new Seen(GroupKind.SEPARATOR, "12", 5, 7));
        }

        @Test
        void leave_out_a_flash_that_was_not_sent() {
            // A tenth of a second amid the four seconds between the codes.
            List<Integer> lengths = new ArrayList<>(clean("11", "11"));
            lengths.set(4, 1900);
            lengths.addAll(5, List.of(100, 2000));
            assertThat(weigher(TWICE, lengths, structure(TWICE, "11", "11")).groups())
                    .containsExactly(new Seen(GroupKind.CODE, "11", 0, 1), new Seen(GroupKind.CODE, "11", 3, 4));
        }
    }

    @Test
    void what_it_takes_from_the_stock_it_gives_back() {
        Flashes flashes = flashes(clean("11"));
        SentList row = new SentList(TWICE, open(2), List.of("11"));
        Pass one = RowPass.run(row, flashes, CHANNEL, new Lattice());
        Pass other = RowPass.run(row, flashes, CHANNEL, new Lattice());
        stock.giveBack(one);
        stock.giveBack(other);
        Guess rarelyOne = sign("2", 1 - 2e-5, "1", 2e-5);
        Found[] groups = {whole("34"), whole(sign("5", 1.0), rarelyOne)};
        // The best list is not the first that is weighed, nor the last.
        ListWeigher weigher = weigher(LOOPING, clean("34", "51"), structure(LOOPING, groups));
        assertThat(weigher.codes()).containsExactly("34", "51");
        assertThat(weigher.logWeights()).hasSizeGreaterThan(3);
        assertThat(List.of(stock.take(), stock.take())).containsExactlyInAnyOrder(one.lattice(), other.lattice());
    }
}
