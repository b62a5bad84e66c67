/**
 * A reading drawn over the pulse train that it was made from: every flash and gap with its label, doubtful places marked.
 * Only drawing; what is doubtful was decided by the decoder.
 */
@NullMarked
package telltally.decoder.timeline;

import org.jspecify.annotations.NullMarked;
