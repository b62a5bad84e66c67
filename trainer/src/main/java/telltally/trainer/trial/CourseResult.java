package telltally.trainer.trial;

/**
 * How one learner's course went.
 *
 * @param finished whether every skill was passed and truly mastered before the lamp time ran out
 * @param minutesToMastery lamp time until every skill was truly mastered, passed or not; all of it if that never came
 * @param minutesToShown lamp time until every skill was passed as well
 * @param passes how many passes the mastery rule granted
 * @param falsePasses to skills that were not truly mastered
 * @param retained the true chance at full level 30 days after the end without practice, on average over the skills
 */
record CourseResult(
        boolean finished,
        double minutesToMastery,
        double minutesToShown,
        int drills,
        int days,
        int passes,
        int falsePasses,
        double retained) {}
