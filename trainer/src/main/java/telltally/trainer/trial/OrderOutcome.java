package telltally.trainer.trial;

/**
 * How one order of practice did over all learners.
 *
 * @param id of the order
 * @param minutesToMastery lamp time until the whole path was truly mastered, passed or not
 * @param minutesToShown lamp time until it was passed as well
 * @param saved the share of lamp time to mastery by which the tutor was shorter than this order, with the same people
 * @param savedShown the same of lamp time until mastery was shown
 * @param falsePasses share of granted passes to skills that were not truly mastered
 * @param retained true chance at full level 30 days later without practice
 */
public record OrderOutcome(
        String id,
        Estimate minutesToMastery,
        Estimate minutesToShown,
        Estimate saved,
        Estimate savedShown,
        Estimate falsePasses,
        Estimate retained,
        Estimate days,
        Estimate drills,
        int unfinished) {}
