/**
 * Who did what when: learners by a name they choose and every answer of theirs, in one SQLite file; exports of it.
 *
 * <p>The file keeps SQLite's rollback journal instead of a write-ahead log, because data folders often lie on a
 * network, where a write-ahead log does not work (sqlite.org/wal.html), and because then everything is in one file as
 * soon as nobody writes. Commits are synchronous to the last, the folder included ({@code synchronous=EXTRA}): an answer
 * that was written is there after a power cut too. What an answer means belongs to {@code drill} and {@code lesson}, what
 * follows from it to {@code mastery}.
 */
@NullMarked
package telltally.trainer.logbook;

import org.jspecify.annotations.NullMarked;
