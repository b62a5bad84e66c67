/**
 * What a learner can do, how sure that is, and what to practise next. Three kinds of knowledge are followed by a
 * published model each: counting by a rating of ability against difficulty, rules by knowledge tracing, facts by a model
 * of forgetting. All are values that fold over answers; nothing here shows, stores or times anything.
 */
@NullMarked
package telltally.trainer.mastery;

import org.jspecify.annotations.NullMarked;
