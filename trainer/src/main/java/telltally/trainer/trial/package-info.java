/**
 * Simulated learners, and the tutor compared with simpler orders of practice on them. What a simulated learner is like is
 * assumption, told in {@link telltally.trainer.trial.Assumptions}; nothing here says anything about people.
 */
@NullMarked
package telltally.trainer.trial;

import org.jspecify.annotations.NullMarked;
