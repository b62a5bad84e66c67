package telltally.trainer.screen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import telltally.simulator.format.SentGroup;
import telltally.simulator.signal.Interval;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Question;
import telltally.trainer.mastery.Choice;
import telltally.trainer.text.Texts;

/** What there is to know before the first drill of a skill, with an example that is answered already. */
public final class AdviceScreen implements Screen {
    /** So many examples are looked at for the one that shows most. */
    private static final int EXAMPLES = 12;

    private final Trainer trainer;
    private final DrillCourse course;
    private final Choice choice;
    private final Drill example;

    AdviceScreen(Trainer trainer, DrillCourse course, Choice choice) {
        this.trainer = trainer;
        this.course = course;
        this.choice = choice;
        this.example = example(trainer.library().drillMaker(), choice);
    }

    /** The one with the most kinds of group, and with a flash missed or a ghost if there may be one. */
    private static Drill example(DrillMaker maker, Choice choice) {
        return LongStream.rangeClosed(1, EXAMPLES)
                .mapToObj(seed -> maker.make(choice.skill(), choice.level(), seed))
                .reduce((best, other) -> kinds(other) > kinds(best) ? other : best)
                .orElseThrow();
    }

    private static long kinds(Drill drill) {
        List<SentGroup> groups = drill.truth().groups();
        Set<Interval> sent = groups.stream()
                .flatMap(group -> group.signs().stream())
                .flatMap(sign -> sign.flashes().stream())
                .collect(Collectors.toSet());
        Set<Interval> seen =
                drill.pulses().intervals().stream().filter(Interval::lit).collect(Collectors.toSet());
        long kinds = groups.stream()
                .map(group -> group.kind() + " " + group.segment())
                .distinct()
                .count();
        return kinds + (seen.equals(sent) ? 0 : 1);
    }

    @Override
    public String title() {
        return trainer.name(choice.skill());
    }

    public String advice() {
        return texts().of("drill.why-" + choice.skill().key());
    }

    /** How the codes of the example are numbered; empty where that is not what is learnt. */
    public Optional<String> notes() {
        return trainer.library().notes(example);
    }

    /** What is asked in the example; a drill may ask otherwise. */
    public String task() {
        return example.question().task().in(texts());
    }

    /** What is sent in the example, with the right answer under it. */
    public Timeline example() {
        return new TimelineMaker(texts(), example, example.mark(example.perfectAnswer()), List.of()).timeline();
    }

    /** The right answer in words; empty where codes are written, which stand under the example. */
    public Optional<String> answer() {
        if (example.question() instanceof Question.Choose choose) {
            return Optional.of(told(choose.options().get(choose.right()).text().in(texts())));
        }
        if (example.question() instanceof Question.HowMany many) {
            return Optional.of(told(Integer.toString(many.right())));
        }
        return Optional.empty();
    }

    private String told(String answer) {
        return texts().of("drill.example-answer", answer);
    }

    /** One code of the example with a running count. */
    public void replay(Timeline.Piece piece) {
        piece.group()
                .ifPresent(group -> trainer.show(new ReplayScreen(
                        trainer,
                        this,
                        Showing.of(example, DrillScreen.shownBy(example, trainer.agreed())),
                        Optional.of(group))));
    }

    /** On to the drill itself. */
    public void start() {
        trainer.drill(course, choice);
    }

    @Override
    public void back() {
        course.done();
    }

    private Texts texts() {
        return trainer.texts();
    }
}
