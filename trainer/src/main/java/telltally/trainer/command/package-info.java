/**
 * The command line: what each command takes, prints and exits with. What a command does belongs to the packages
 * it calls; the window is opened by one door, after a display was found.
 */
@NullMarked
package telltally.trainer.command;

import org.jspecify.annotations.NullMarked;
