package telltally.trainer.logbook;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import telltally.simulator.Simulation;
import telltally.trainer.drill.Answer;
import telltally.trainer.drill.DigitConfusions;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Skill;
import telltally.trainer.mastery.Tutor;

/** Everything that one learner has answered, in the order answered, and what it adds up to. */
public record History(List<DrillEntry> drills, List<LessonEntry> lessons) {
    public History {
        drills = List.copyOf(drills);
        lessons = List.copyOf(lessons);
    }

    /** Nothing answered yet. */
    public static History empty() {
        return new History(List.of(), List.of());
    }

    public static History of(Logbook logbook, Learner learner) throws LogbookException {
        return new History(logbook.drills(learner), logbook.lessons(learner));
    }

    public History plus(Entry entry) {
        if (entry instanceof DrillEntry drill) {
            List<DrillEntry> more = new ArrayList<>(drills);
            more.add(drill);
            return new History(more, lessons);
        }
        List<LessonEntry> more = new ArrayList<>(lessons);
        more.add((LessonEntry) entry);
        return new History(drills, more);
    }

    public int answers() {
        return drills.size() + lessons.size();
    }

    /** Whether a drill of a skill was ever answered. */
    public boolean hasMet(Skill skill) {
        return drills.stream().anyMatch(drill -> drill.skill() == skill);
    }

    /**
     * What the tutor makes of it.
     *
     * @param facts the items of the facts that are to be learnt, in the order to meet them
     */
    public Tutor tutor(List<String> facts) {
        Tutor tutor = Tutor.beginning(facts);
        for (DrillEntry drill : drills) {
            tutor = tutor.after(drill.credits(), drill.answeredAt());
        }
        return tutor;
    }

    /** The days with drills that were scored, in order. */
    public List<PractisedDay> days(ZoneId zone) {
        TreeMap<LocalDate, List<DrillEntry>> byDay = drills.stream()
                .filter(DrillEntry::scored)
                .collect(Collectors.groupingBy(
                        drill -> LocalDate.ofInstant(drill.answeredAt(), zone), TreeMap::new, Collectors.toList()));
        return byDay.entrySet().stream()
                .map(day -> PractisedDay.of(day.getKey(), day.getValue()))
                .toList();
    }

    /** How many days without a break something was answered, up to today or, where today is yet to come, yesterday. */
    public int daysInARow(LocalDate today, ZoneId zone) {
        Set<LocalDate> practised = Stream.<Entry>concat(drills.stream(), lessons.stream())
                .map(entry -> LocalDate.ofInstant(entry.answeredAt(), zone))
                .collect(Collectors.toSet());
        LocalDate day = practised.contains(today) ? today : today.minusDays(1);
        int days = 0;
        while (practised.contains(day)) {
            days++;
            day = day.minusDays(1);
        }
        return days;
    }

    /** How many drills, the latest ones, were right one after the other. */
    public int rightInARow() {
        int right = 0;
        for (int i = drills.size() - 1; i >= 0 && drills.get(i).right(); i--) {
            right++;
        }
        return right;
    }

    /**
     * Which digit was written for which. Each drill is made and marked again from what is kept of it; one that another
     * version of the program would make otherwise is left out.
     */
    public DigitConfusions confusions(DrillMaker maker) {
        DigitConfusions confusions = DigitConfusions.none();
        for (DrillEntry entry : drills) {
            if (!entry.scored() || !entry.given().startsWith("written ")) {
                continue;
            }
            if (entry.circumstances().generator() == Simulation.GENERATOR_VERSION) {
                Drill drill = maker.make(
                        entry.skill(),
                        entry.level(),
                        entry.item(),
                        entry.circumstances().seed());
                if (drill.perfectAnswer().text().equals(entry.expected())) {
                    confusions = confusions.plus(drill, drill.mark(Answer.parse(entry.given())));
                }
            }
        }
        return confusions;
    }
}
