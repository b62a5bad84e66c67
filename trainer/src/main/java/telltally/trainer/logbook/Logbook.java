package telltally.trainer.logbook;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Learners and every answer of theirs. What a method has written when it returns survives the end of the program, of the
 * system and of the power. Several programs may have the same file open; within one, for one thread at a time.
 */
public final class Logbook implements AutoCloseable {
    /** How long to wait for another program that writes. */
    private static final int BUSY_MILLIS = 5_000;

    private final Path file;
    private final Sql sql;
    private final EntryTable entries;

    private Logbook(Path file, Sql sql) {
        this.file = file;
        this.sql = sql;
        this.entries = new EntryTable(sql);
    }

    /**
     * Opens the logbook of a folder; folder and file are made where they are missing.
     *
     * @throws LogbookException with the reason, if it cannot be used; nothing is changed then
     */
    public static Logbook open(Path folder) throws LogbookException {
        return open(folder, BUSY_MILLIS);
    }

    static Logbook open(Path folder, int busyMillis) throws LogbookException {
        LogbookFile file = new LogbookFile(folder, busyMillis);
        return new Logbook(file.file(), file.open());
    }

    /** Where the logbook of a folder is or would be. */
    public static Path fileIn(Path folder) {
        return folder.resolve(LogbookFile.NAME);
    }

    /** In the order in which they came. */
    public List<Learner> learners() throws LogbookException {
        return done(() -> sql.all(
                "SELECT id, name, since FROM learner ORDER BY id",
                row -> new Learner(row.getLong(1), row.getString(2), Instant.parse(row.getString(3)))));
    }

    /** By their name, whatever its upper and lower case. */
    public Optional<Learner> find(String name) throws LogbookException {
        String key = Learner.key(name);
        return learners().stream()
                .filter(each -> Learner.key(each.name()).equals(key))
                .findFirst();
    }

    /**
     * A new learner; nobody where the name is taken.
     *
     * @throws IllegalArgumentException if {@link Learner#fault} has something to say about the name
     */
    public Optional<Learner> enrol(String name, Instant now) throws LogbookException {
        Learner.fault(name).ifPresent(fault -> {
            throw new IllegalArgumentException("the name " + fault.sentence());
        });
        String tidy = Learner.tidied(name);
        return done(() -> sql.whole(() -> {
            int added = sql.change(
                    "INSERT INTO learner (name, name_key, since) VALUES (?, ?, ?) ON CONFLICT (name_key) DO NOTHING",
                    tidy,
                    Learner.key(tidy),
                    EntryTable.text(now));
            return added == 0
                    ? Optional.empty()
                    : Optional.of(new Learner(
                            sql.number("SELECT last_insert_rowid()"), tidy, Instant.parse(EntryTable.text(now))));
        }));
    }

    /** Writes an answer down. */
    public void write(Learner learner, Entry entry) throws LogbookException {
        done(() -> sql.whole(() -> {
            if (entry instanceof DrillEntry drill) {
                entries.add(learner, drill);
            } else {
                entries.add(learner, (LessonEntry) entry);
            }
            return true;
        }));
    }

    /** Drills in the order answered. */
    public List<DrillEntry> drills(Learner learner) throws LogbookException {
        return done(() -> entries.drills(learner));
    }

    /** Lessons in the order answered. */
    public List<LessonEntry> lessons(Learner learner) throws LogbookException {
        return done(() -> entries.lessons(learner));
    }

    /** Removes a learner and every answer of theirs, so that no trace of either is left in the file. */
    public void forget(Learner learner) throws LogbookException {
        done(() -> {
            sql.whole(() -> sql.change("DELETE FROM learner WHERE id = ?", learner.id()));
            // What is deleted is written over with zeros; what earlier reorganising of pages left behind goes with
            // this.
            sql.run("VACUUM");
            return true;
        });
    }

    /** What SQLite finds wrong with the file; empty where it is sound. */
    public List<String> faults() throws LogbookException {
        return done(() -> sql.all("PRAGMA integrity_check", row -> row.getString(1)).stream()
                .filter(line -> !line.equals("ok"))
                .toList());
    }

    public Path file() {
        return file;
    }

    @Override
    public void close() throws LogbookException {
        done(() -> {
            sql.connection().close();
            return true;
        });
    }

    private <T> T done(Sql.Work<T> work) throws LogbookException {
        try {
            return work.done();
        } catch (SQLException failure) {
            throw LogbookException.of(file, failure);
        }
    }
}
