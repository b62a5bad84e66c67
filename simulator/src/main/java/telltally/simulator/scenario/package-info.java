/**
 * One lesson as a file, checked: which codes are sent in which format, how the learner sees it, and the words
 * of the briefing.
 */
@NullMarked
package telltally.simulator.scenario;

import org.jspecify.annotations.NullMarked;
