/**
 * Counting practice: the skills, drills without end for each of them, how an answer is marked and credited, and the
 * course of one round without a window. Which drill comes next belongs to {@code mastery}, reading and writing lines to
 * whoever runs the drill.
 */
@NullMarked
package telltally.trainer.drill;

import org.jspecify.annotations.NullMarked;
