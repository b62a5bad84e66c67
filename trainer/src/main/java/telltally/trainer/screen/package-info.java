/**
 * One view-model a screen: what is shown, what may be pressed, what happens then. Plain Java and observable values; a
 * screen knows no node and no thread, and learns the time from whoever calls {@code advanceTo}.
 */
@NullMarked
package telltally.trainer.screen;

import org.jspecify.annotations.NullMarked;
