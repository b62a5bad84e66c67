/**
 * A pulse train against a clock: what is lit now, how late it was, how fast it may flash, and how it sounds. Whoever has
 * a clock drives it; nothing here draws.
 */
@NullMarked
package telltally.trainer.playback;

import org.jspecify.annotations.NullMarked;
