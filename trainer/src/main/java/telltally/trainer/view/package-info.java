/**
 * The trainer's window: nodes and one style sheet, thin over the screens. Its one door is {@code TrainerWindow}. Colours
 * are named by role in the style sheet, lengths follow the size of the text.
 */
@NullMarked
package telltally.trainer.view;

import org.jspecify.annotations.NullMarked;
