/**
 * How a learner wants the window: language, theme, sizes, display and sound; checked values, kept in one small file. What
 * follows from a choice belongs to whoever shows or plays it.
 */
@NullMarked
package telltally.trainer.settings;

import org.jspecify.annotations.NullMarked;
