package telltally.trainer.logbook;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** The logbook cannot be used as it was to be. Nothing of it was changed. */
public final class LogbookException extends Exception {
    /** What stands in the way; each is something that its user can do something about. */
    public enum Reason {
        /** The folder is not there and cannot be made, or the file cannot be opened. */
        NO_FOLDER("cannot be opened or made there; a folder that can be written to was expected"),
        /** No SQLite file, or one with errors in it. */
        DAMAGED("is damaged or no logbook; it was left as it is (move it away to begin a new one)"),
        /** A sound SQLite file of some other program. */
        FOREIGN("belongs to another program; it was left as it is"),
        /** Written by a later version of Telltally. */
        NEWER("was written by a newer Telltally; it was left as it is"),
        /** Another program keeps it to itself. */
        LOCKED("is locked by another program; close that and try again"),
        READ_ONLY("cannot be written to"),
        /** Somebody else has deleted the learner meanwhile. */
        LEARNER_GONE("no longer has this learner"),
        /** No space on the disk. */
        FULL("cannot grow: there is no space left for it"),
        /** The disk does not do what it should. */
        DISK("cannot be read or written: the disk reports an error");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }
    }

    private final Reason reason;
    private final transient Path file;
    private final String sentence;

    LogbookException(Reason reason, Path file, Throwable cause) {
        super(file + ": " + reason.sentence + told(cause), cause);
        this.reason = reason;
        this.file = file;
        this.sentence = reason.sentence + told(cause);
    }

    LogbookException(Reason reason, Path file, String detail) {
        super(file + ": " + reason.sentence + told(detail));
        this.reason = reason;
        this.file = file;
        this.sentence = reason.sentence + told(detail);
    }

    /** @throws IllegalStateException if it is a mistake in this program rather than something about the file */
    static LogbookException of(Path file, SQLException failure) {
        int primary = failure.getErrorCode() & 0xff;
        if (primary == SQLiteErrorCode.SQLITE_BUSY.code || primary == SQLiteErrorCode.SQLITE_LOCKED.code) {
            return new LogbookException(Reason.LOCKED, file, "");
        }
        if (primary == SQLiteErrorCode.SQLITE_NOTADB.code || primary == SQLiteErrorCode.SQLITE_CORRUPT.code) {
            return new LogbookException(Reason.DAMAGED, file, failure);
        }
        if (primary == SQLiteErrorCode.SQLITE_READONLY.code || primary == SQLiteErrorCode.SQLITE_PERM.code) {
            return new LogbookException(Reason.READ_ONLY, file, "");
        }
        if (primary == SQLiteErrorCode.SQLITE_CANTOPEN.code || primary == SQLiteErrorCode.SQLITE_AUTH.code) {
            return new LogbookException(Reason.NO_FOLDER, file, "");
        }
        if (failure instanceof SQLiteException told
                && told.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_FOREIGNKEY) {
            return new LogbookException(Reason.LEARNER_GONE, file, "");
        }
        if (primary == SQLiteErrorCode.SQLITE_FULL.code) {
            return new LogbookException(Reason.FULL, file, "");
        }
        if (primary == SQLiteErrorCode.SQLITE_IOERR.code) {
            return new LogbookException(Reason.DISK, file, failure);
        }
        throw new IllegalStateException("the logbook " + file + ": " + failure.getMessage(), failure);
    }

    public Reason reason() {
        return reason;
    }

    public Path file() {
        return file;
    }

    /** What is wrong, in words that follow the file's name. */
    public String sentence() {
        return sentence;
    }

    /** One line of the cause. */
    private static String told(Throwable cause) {
        return told(String.valueOf(cause.getMessage()).lines().findFirst().orElse(""));
    }

    private static String told(String detail) {
        return detail.isEmpty() ? "" : " (" + detail + ")";
    }
}
