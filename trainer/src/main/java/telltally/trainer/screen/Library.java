package telltally.trainer.screen;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import telltally.simulator.codelist.CodeList;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.format.FormatCatalog;
import telltally.trainer.drill.Drill;
import telltally.trainer.drill.DrillMaker;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.lesson.LessonShelf;
import telltally.trainer.lesson.Translation;

/** Lessons, drills and code lists in the learner's language. Each is read when it is first asked for. */
final class Library {
    private final Supplier<LessonShelf> written;
    private final Locale language;
    private @Nullable Translation translation;
    private @Nullable LessonShelf lessons;
    private @Nullable CodeListCatalog codeLists;
    private @Nullable DrillMaker drillMaker;

    /** @param written waits for the lessons where they are not read yet */
    Library(Supplier<LessonShelf> written, Locale language) {
        this.written = written;
        this.language = language;
    }

    /** The same in another language. */
    Library in(Locale other) {
        return other.equals(language) ? this : new Library(written, other);
    }

    LessonShelf lessons() {
        LessonShelf made = lessons;
        if (made == null) {
            made = translation().of(written.get());
            lessons = made;
        }
        return made;
    }

    DrillMaker drillMaker() {
        DrillMaker made = drillMaker;
        if (made == null) {
            made = new DrillMaker(FormatCatalog.shipped(), codeLists());
            drillMaker = made;
        }
        return made;
    }

    /** What codes mean is learnt code by code, in this order. */
    List<String> facts() {
        return drillMaker().items(Skill.CODE_MEANING, Level.FULL);
    }

    /** How the codes are numbered that a drill asks the meaning of; empty for other drills. */
    Optional<String> notes(Drill drill) {
        return drill.skill() == Skill.CODE_MEANING
                ? codeLists()
                        .find(drill.item().substring(0, drill.item().indexOf(' ')))
                        .map(CodeList::notes)
                : Optional.empty();
    }

    private CodeListCatalog codeLists() {
        CodeListCatalog made = codeLists;
        if (made == null) {
            made = translation().of(CodeListCatalog.shipped());
            codeLists = made;
        }
        return made;
    }

    private Translation translation() {
        Translation made = translation;
        if (made == null) {
            made = Translation.into(language);
            translation = made;
        }
        return made;
    }
}
