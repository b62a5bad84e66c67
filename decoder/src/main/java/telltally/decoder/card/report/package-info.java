/** Score cards, comparisons and single cases as a person reads them: plain text for a terminal, and one page of HTML. */
@NullMarked
package telltally.decoder.card.report;

import org.jspecify.annotations.NullMarked;
