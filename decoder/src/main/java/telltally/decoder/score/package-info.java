/**
 * How well a decoder does: seed sets, the cases they stand for with their digests, and floors. This is the one place
 * of the module that knows the truth; nothing that decodes may look in here.
 */
@NullMarked
package telltally.decoder.score;

import org.jspecify.annotations.NullMarked;
