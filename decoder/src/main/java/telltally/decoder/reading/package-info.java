/**
 * What a decoder is given and what it gives back: the seam that every decoder implements, and readings as JSON.
 * Nothing here or in any decoder knows the truth.
 */
@NullMarked
package telltally.decoder.reading;

import org.jspecify.annotations.NullMarked;
