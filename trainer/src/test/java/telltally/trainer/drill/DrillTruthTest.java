package telltally.trainer.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import telltally.decoder.lattice.LatticeDecoder;
import telltally.decoder.plain.PlainDecoder;
import telltally.decoder.reading.Reading;
import telltally.simulator.format.FlashFormat;
import telltally.simulator.format.FormatCatalog;
import telltally.simulator.format.GroupKind;
import telltally.simulator.format.Segment;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Interval;

/** What a drill says was sent is what somebody who makes no mistake reads from it. */
class DrillTruthTest {
    private static final DrillMaker MAKER = DrillMaker.shipped();

    /** In these a flash is missing, one is too many, or there is no list to be read. */
    private static final Set<Skill> NOT_TO_BE_DECODED =
            EnumSet.of(Skill.MISSED_FLASH, Skill.GHOST_FLASH, Skill.SEPARATOR_PAUSE);

    @Provide
    Arbitrary<Integer> levels() {
        return Arbitraries.integers().between(Level.LOWEST, Level.HIGHEST);
    }

    @Provide
    Arbitrary<Skill> clean() {
        return Arbitraries.of(Skill.class).filter(skill -> !NOT_TO_BE_DECODED.contains(skill));
    }

    @Property(tries = 400)
    void a_decoder_reads_from_the_flashes_what_was_sent(
            @ForAll("clean") Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        Drill drill = MAKER.make(skill, new Level(level), seed);
        Reading reading = new PlainDecoder().decode(drill.pulses(), List.of(drill.format()));
        if (skill == Skill.FROM_THE_MIDDLE) {
            // The decoder may begin the list where it begins, the truth begins where it was joined.
            List<String> read = reading.codes().getOrDefault(Segment.CODES, List.of());
            assertThat(read)
                    .containsExactlyInAnyOrderElementsOf(drill.truth().codes().get(Segment.CODES));
        } else {
            assertThat(reading.codes()).isEqualTo(drill.truth().codes());
        }
    }

    @Property(tries = 300)
    void every_code_that_is_sent_is_one_that_its_format_can_send(
            @ForAll Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        Drill drill = MAKER.make(skill, new Level(level), seed);
        for (SentGroup group : drill.truth().groups()) {
            if (group.kind() == GroupKind.CODE) {
                assertThat(drill.format().refusal(group.digits())).isEmpty();
            }
        }
        assertThat(drill.pulses().litAtStart() && skill != Skill.FROM_THE_MIDDLE)
                .isFalse();
        assertThat(drill.pulses().litAtEnd()).isFalse();
    }

    /** The dark at the end is what tells that nothing more comes. */
    @Property(tries = 300)
    void after_the_last_flash_it_is_dark_for_longer_than_between_two_codes(
            @ForAll("clean") Skill skill, @ForAll("levels") int level, @ForAll long seed) {
        Drill drill = MAKER.make(skill, new Level(level), seed);
        List<SentGroup> groups = drill.truth().groups();
        long longest = 0;
        for (int i = 1; i < groups.size(); i++) {
            boolean codes =
                    groups.get(i - 1).kind() == GroupKind.CODE && groups.get(i).kind() == GroupKind.CODE;
            long gap = groups.get(i).startNanos() - groups.get(i - 1).endNanos();
            longest = codes ? Math.max(longest, gap) : longest;
        }
        long tail = drill.pulses().endNanos() - groups.get(groups.size() - 1).endNanos();
        assertThat(tail).isGreaterThan(longest);
    }

    @Test
    void a_missed_flash_is_missed_once_inside_a_digit_and_sometimes_not_at_all() {
        odd(Skill.MISSED_FLASH, 0, 1);
    }

    @Test
    void a_ghost_flash_comes_once_inside_a_digit_and_sometimes_not_at_all() {
        odd(Skill.GHOST_FLASH, 1, 0);
    }

    private static void odd(Skill skill, int added, int lost) {
        int without = 0;
        for (long seed = 0; seed < 100; seed++) {
            Drill drill = MAKER.make(skill, new Level(1 + (int) (seed % 10)), seed);
            List<Interval> seen = new ArrayList<>(
                    drill.pulses().intervals().stream().filter(Interval::lit).toList());
            List<Interval> sent = drill.truth().groups().stream()
                    .flatMap(group -> group.signs().stream())
                    .flatMap(sign -> sign.flashes().stream())
                    .toList();
            List<Interval> missing = new ArrayList<>(sent);
            missing.removeAll(seen);
            seen.removeAll(new HashSet<>(sent));
            without += missing.isEmpty() && seen.isEmpty() ? 1 : 0;
            if (!missing.isEmpty() || !seen.isEmpty()) {
                assertThat(seen).hasSize(added);
                assertThat(missing).hasSize(lost);
            }
        }
        assertThat(without).isBetween(15, 60);
    }

    /** The lattice decoder knows missed and ghost flashes; where it is sure, it is sure of what was sent. */
    @Test
    void what_is_right_about_a_missed_or_ghost_flash_is_what_the_rhythm_tells() {
        for (Skill skill : List.of(Skill.MISSED_FLASH, Skill.GHOST_FLASH)) {
            long right = LongStream.range(0, 60)
                    .mapToObj(seed -> MAKER.make(skill, new Level(7), seed))
                    .filter(drill -> new LatticeDecoder()
                            .decode(drill.pulses(), List.of(drill.format()))
                            .codes()
                            .equals(drill.truth().codes()))
                    .count();
            assertThat(right).as(skill + " read right of 60").isGreaterThanOrEqualTo(50);
        }
    }

    @Property(tries = 200)
    void of_the_pauses_one_is_longer_by_the_ratio_of_its_level_and_that_is_the_answer(
            @ForAll("levels") int level, @ForAll long seed) {
        Drill drill = MAKER.make(Skill.SEPARATOR_PAUSE, new Level(level), seed);
        List<Long> pauses = new ArrayList<>();
        List<SentGroup> groups = drill.truth().groups();
        for (int i = 1; i < groups.size(); i++) {
            pauses.add(groups.get(i).startNanos() - groups.get(i - 1).endNanos());
        }
        int right = ((Question.Choose) drill.question()).right();
        for (int i = 0; i < pauses.size(); i++) {
            double ratio = (double) pauses.get(right) / pauses.get(i);
            assertThat(ratio).isEqualTo(i == right ? 1 : 2.5 - (level - 1) / 9.0, offset(1e-6));
        }
    }

    @Test
    void at_the_full_level_the_pauses_are_those_of_the_vehicle() {
        Drill drill = MAKER.make(Skill.SEPARATOR_PAUSE, Level.FULL, 1);
        Set<Long> pauses = new HashSet<>();
        List<SentGroup> groups = drill.truth().groups();
        for (int i = 1; i < groups.size(); i++) {
            pauses.add(groups.get(i).startNanos() - groups.get(i - 1).endNanos());
        }
        assertThat(pauses).containsExactlyInAnyOrder(4_000_000_000L, 6_000_000_000L);
    }

    @Test
    void at_the_full_level_timing_is_that_of_a_shipped_format() {
        for (Skill skill : Skill.values()) {
            for (long seed = 0; seed < 20; seed++) {
                Drill drill = MAKER.make(skill, Level.FULL, seed);
                FlashFormat shipped =
                        FormatCatalog.shipped().find(drill.format().id()).orElseThrow();
                assertThat(drill.format().gaps()).as(skill.key()).isEqualTo(shipped.gaps());
                assertThat(shipped.flashKinds())
                        .as(skill.key())
                        .containsAll(drill.format().flashKinds());
            }
        }
    }

    @Test
    void whoever_joins_midway_still_sees_every_code_whole() {
        for (long seed = 0; seed < 100; seed++) {
            Drill drill = MAKER.make(Skill.FROM_THE_MIDDLE, new Level(1 + (int) (seed % 10)), seed);
            int expected = new Ease(drill.level()).count(2, 4);
            assertThat(drill.truth().codes().get(Segment.CODES)).hasSize(expected);
        }
    }
}
