/**
 * What the program says, by key and language, from resource bundles. What is said when belongs to whoever says it; what
 * lessons and code lists say is theirs.
 */
@NullMarked
package telltally.trainer.text;

import org.jspecify.annotations.NullMarked;
