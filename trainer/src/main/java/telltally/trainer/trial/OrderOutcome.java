package telltally.trainer.trial;

/**
 * How one order of practice did over all learners.
 *
 * @param id of the order
 * @param minutes lamp time until the whole path was passed and truly mastered
 * @param minutesToTruth lamp time until it was truly mastered, passed or not
 * @param saved the share of lamp time by which the tutor was shorter than this order, learner by learner the same people
 * @param falsePasses share of granted passes to skills that were not truly mastered
 * @param retained true chance at full level 30 days later without practice
 */
public record OrderOutcome(
        String id,
        Estimate minutes,
        Estimate minutesToTruth,
        Estimate saved,
        Estimate falsePasses,
        Estimate retained,
        Estimate days,
        Estimate drills,
        int unfinished) {}
