/**
 * Counting practice without a window: how flashes are written as text, and the course of one round. What is asked and
 * how it is marked belongs to the lesson; reading and writing lines belongs to whoever runs the drill.
 */
@NullMarked
package telltally.trainer.drill;

import org.jspecify.annotations.NullMarked;
