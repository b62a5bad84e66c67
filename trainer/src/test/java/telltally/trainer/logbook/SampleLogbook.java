package telltally.trainer.logbook;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import telltally.simulator.Simulation;
import telltally.simulator.chance.Chance;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.Answered;
import telltally.trainer.drill.Answered.Means;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Choice;
import telltally.trainer.mastery.Tutor;

/** A logbook that somebody has practised with, for tests elsewhere. */
public final class SampleLogbook {
    private static final int DAYS = 14;
    private static final int DRILLS_A_DAY = 12;
    private static final DrillMaker MAKER = DrillMaker.shipped();

    private SampleLogbook() {}

    /** Mira with three drills and a lesson, Jon with nothing yet. */
    public static void in(Path folder) throws LogbookException {
        try (Logbook logbook = Logbook.open(folder)) {
            Learner mira = logbook.enrol("Mira Öberg", SampleEntries.MORNING).orElseThrow();
            logbook.enrol("Jon", SampleEntries.MORNING);
            for (int i = 0; i < 3; i++) {
                logbook.write(mira, SampleEntries.drill("written codes:8@5400"));
            }
            logbook.write(mira, SampleEntries.lesson());
        }
    }

    /** Mira, who has practised nearly every day for two weeks up to now, gets better, and counts nines short; and Jon. */
    public static void practised(Path folder, Instant now) throws LogbookException {
        try (Logbook logbook = Logbook.open(folder)) {
            logbook.enrol("Jon", now);
            Learner mira =
                    logbook.enrol("Mira Öberg", now.minus(Duration.ofDays(20))).orElseThrow();
            for (DrillEntry entry : twoWeeks(now)) {
                logbook.write(mira, entry);
            }
            logbook.write(mira, SampleEntries.lesson());
        }
    }

    /** Real drills, as the tutor proposed them, answered by chance. */
    static List<DrillEntry> twoWeeks(Instant now) {
        Chance chance = Chance.of(5);
        Tutor tutor = Tutor.beginning();
        List<DrillEntry> entries = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            Instant at = now.minus(Duration.ofDays(DAYS - day)).plus(Duration.ofHours(7));
            for (int i = 0; i < DRILLS_A_DAY && day != 5; i++) {
                at = at.plusSeconds(70);
                Choice choice = tutor.next(at, chance.stream("tutor" + entries.size()));
                Drill drill = MAKER.make(choice.skill(), choice.level(), choice.item(), 1000L + entries.size());
                boolean slips = chance.happens(0.4 - 0.02 * day);
                DrillEntry entry =
                        answered(drill, slips ? slip(drill.perfectAnswer()) : drill.perfectAnswer(), at, day);
                entries.add(entry);
                tutor = tutor.after(entry.credits(), at);
            }
        }
        return entries;
    }

    /** A drill at full level, answered right. */
    public static DrillEntry right(Skill skill, long seed, Instant at) {
        Drill drill = MAKER.make(skill, Level.FULL, "", seed);
        return answered(drill, drill.perfectAnswer(), at, 0);
    }

    private static DrillEntry answered(Drill drill, Answer answer, Instant at, int day) {
        Answered answered = new Answered(drill, answer, drill.mark(answer), Means.TYPED, 1, false, false);
        long thoughtNanos = 9_000_000_000L - day * 400_000_000L;
        return DrillEntry.of(
                UUID.randomUUID(),
                at,
                answered,
                new Circumstances(
                        drill.seed(),
                        Simulation.GENERATOR_VERSION,
                        "0.1.0",
                        drill.format().id(),
                        drill.display().key()),
                new DrillEntry.Timing(drill.lampNanos() + thoughtNanos, drill.lampNanos(), 8_000_000),
                true);
    }

    /** One flash too few in the last digit, or the option next to the right one. */
    private static Answer slip(Answer right) {
        if (right instanceof Answer.Chosen chosen) {
            return new Answer.Chosen(chosen.option() == 0 ? 1 : 0);
        }
        if (right instanceof Answer.Counted counted) {
            return new Answer.Counted(counted.number() + 1);
        }
        return right instanceof Answer.Written written
                ? new Answer.Written(
                        written.entries().stream().map(SampleLogbook::oneLess).toList())
                : right;
    }

    private static Answer.Entry oneLess(Answer.Entry entry) {
        String code = entry.code();
        char last = code.charAt(code.length() - 1);
        char less = last > '1' && last <= '9' ? (char) (last - 1) : last;
        return new Answer.Entry(entry.segment(), code.substring(0, code.length() - 1) + less, entry.atMillis());
    }
}
