package telltally.trainer.drill;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import telltally.simulator.codelist.CodeListCatalog;
import telltally.simulator.format.FormatCatalog;

/**
 * Makes drills without end. The same skill, level, item and seed always give the same drill, and the levels of one seed
 * differ as little as they can, so that a drill may be asked for again a little harder.
 */
public final class DrillMaker {
    private final Map<Skill, Recipe> recipes = new EnumMap<>(Skill.class);
    private final MeaningDrills meanings;

    public DrillMaker(FormatCatalog formats, CodeListCatalog lists) {
        meanings = new MeaningDrills(formats, lists);
        digits(new DigitDrills(formats));
        lists(new ListDrills(formats));
        sessions(new SessionDrills(formats));
        watched(new WatchedDrills(formats), new DoubtDrills(formats));
        recipes.put(Skill.SEPARATOR_PAUSE, new PauseDrills(formats)::separatorPause);
        recipes.put(Skill.CYLINDER_FLASHES, new RunningDrills(formats)::cylinderFlashes);
        recipes.put(Skill.CODE_MEANING, meanings::codeMeaning);
    }

    /** From the formats and code lists that ship. */
    public static DrillMaker shipped() {
        return new DrillMaker(FormatCatalog.shipped(), CodeListCatalog.shipped());
    }

    public Drill make(Skill skill, Level level, long seed) {
        return make(skill, level, "", seed);
    }

    /**
     * A drill about one thing.
     *
     * @param item one of {@link #items}, which may be one of a higher level; empty leaves it to chance
     * @throws IllegalArgumentException if the skill knows no such item
     */
    public Drill make(Skill skill, Level level, String item, long seed) {
        if (!item.isEmpty() && !items(skill, Level.FULL).contains(item)) {
            throw new IllegalArgumentException("no drill on " + skill + " is about '" + item + "'");
        }
        return Objects.requireNonNull(recipes.get(skill)).make(new Order(skill, level, item, seed));
    }

    /** What may be asked for by itself: digits to count, codes whose meaning is learnt; none for other skills. */
    public List<String> items(Skill skill, Level level) {
        return switch (skill) {
            case COUNT_A_DIGIT ->
                IntStream.rangeClosed(1, new Ease(level).mostFlashes())
                        .mapToObj(Integer::toString)
                        .toList();
            case CODE_MEANING -> meanings.items(level);
            default -> List.of();
        };
    }

    private void digits(DigitDrills drills) {
        recipes.put(Skill.COUNT_A_DIGIT, drills::countADigit);
        recipes.put(Skill.HOLD_TWO_DIGITS, drills::holdTwoDigits);
        recipes.put(Skill.END_OF_A_DIGIT, drills::endOfADigit);
        recipes.put(Skill.LONG_AND_SHORT, drills::longAndShort);
    }

    private void lists(ListDrills drills) {
        recipes.put(Skill.WRITE_AT_ONCE, drills::writeAtOnce);
        recipes.put(Skill.END_OF_A_CODE, drills::endOfACode);
        recipes.put(Skill.END_OF_THE_LIST, drills::endOfTheList);
        recipes.put(Skill.FROM_THE_MIDDLE, drills::fromTheMiddle);
        recipes.put(Skill.INTERRUPTION, drills::interruption);
        recipes.put(Skill.LIST_IN_THE_HEAD, drills::listInTheHead);
    }

    private void sessions(SessionDrills drills) {
        recipes.put(Skill.SEPARATOR, drills::separator);
        recipes.put(Skill.SEGMENTS_APART, drills::segmentsApart);
        recipes.put(Skill.PASS_CODE, drills::passCode);
        recipes.put(Skill.BULB_CHECK, drills::bulbCheck);
        recipes.put(Skill.BALANCE_RESULT, drills::balanceResult);
    }

    private void watched(WatchedDrills drills, DoubtDrills doubts) {
        recipes.put(Skill.DIM_LAMP, drills::dimLamp);
        recipes.put(Skill.NEEDLE, drills::needle);
        recipes.put(Skill.BY_EAR, drills::byEar);
        recipes.put(Skill.MISSED_FLASH, doubts::missedFlash);
        recipes.put(Skill.GHOST_FLASH, doubts::ghostFlash);
    }
}
