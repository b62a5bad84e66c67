/**
 * A lesson as it is practised: where it is found, what is played, what the learner wrote and how that is marked. The
 * window and the terminal share it, so nothing here knows either.
 */
@NullMarked
package telltally.trainer.lesson;

import org.jspecify.annotations.NullMarked;
