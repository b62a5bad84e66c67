/**
 * Decoders that are not part of Telltally: programs of their own, in any language, that are asked by a line protocol,
 * and decoders in Java that lie on the class path. Whatever a program does, the one who asks it gets an outcome for
 * every session, in bounded time and memory. What is sent to a program holds nothing of the truth.
 */
@NullMarked
package telltally.decoder.outside;

import org.jspecify.annotations.NullMarked;
