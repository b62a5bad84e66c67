package telltally.trainer.logbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Properties;
import org.sqlite.JDBC;
import telltally.trainer.logbook.LogbookException.Reason;

/** Opens the file: makes it where there is none, looks whether it is sound and ours, brings it to today's schema. */
final class LogbookFile {
    static final String NAME = "logbook.sqlite";

    /** What {@code PRAGMA application_id} says of our files: the letters TLLY. */
    static final int APPLICATION_ID = 0x544c4c59;

    /** Each version is the one before with {@code schema-N.sql} applied. */
    static final int SCHEMA_VERSION = 2;

    private final Path file;
    private final int busyMillis;

    /** @param busyMillis how long to wait for others who write */
    LogbookFile(Path folder, int busyMillis) {
        this.file = folder.toAbsolutePath().normalize().resolve(NAME);
        this.busyMillis = busyMillis;
    }

    Path file() {
        return file;
    }

    Sql open() throws LogbookException {
        try {
            Files.createDirectories(Objects.requireNonNull(file.getParent()));
        } catch (IOException e) {
            throw new LogbookException(Reason.NO_FOLDER, file, "");
        }
        try {
            Sql sql = new Sql(connect());
            try {
                prepare(sql);
                return sql;
            } catch (SQLException | LogbookException | RuntimeException failure) {
                sql.connection().close();
                throw failure;
            }
        } catch (SQLException failure) {
            throw LogbookException.of(file, failure);
        }
    }

    private Connection connect() throws SQLException {
        // The driver takes what follows a question mark for settings; an address has none that are not escaped.
        String name = file.toString().contains("?") ? file.toUri().toString() : file.toString();
        return JDBC.createConnection(JDBC.PREFIX + name, new Properties());
    }

    private void prepare(Sql sql) throws SQLException, LogbookException {
        sql.run("PRAGMA busy_timeout = " + busyMillis);
        long version = sql.number("PRAGMA user_version");
        long tables = sql.number("SELECT count(*) FROM sqlite_schema");
        boolean fresh = version == 0 && tables == 0;
        if (!fresh && sql.number("PRAGMA application_id") != APPLICATION_ID) {
            throw new LogbookException(Reason.FOREIGN, file, "");
        }
        if (version > SCHEMA_VERSION) {
            throw new LogbookException(
                    Reason.NEWER, file, "its schema is " + version + ", this program knows " + SCHEMA_VERSION);
        }
        String state = sql.one("PRAGMA quick_check(1)", row -> row.getString(1));
        if (!state.equals("ok")) {
            throw new LogbookException(Reason.DAMAGED, file, state.replace("\n", " "));
        }
        settle(sql);
        if (version < SCHEMA_VERSION) {
            sql.whole(() -> migrated(sql));
        }
    }

    private static void settle(Sql sql) throws SQLException {
        sql.run("PRAGMA journal_mode = DELETE");
        sql.run("PRAGMA synchronous = EXTRA");
        sql.run("PRAGMA fullfsync = ON");
        sql.run("PRAGMA foreign_keys = ON");
        sql.run("PRAGMA secure_delete = ON");
        sql.run("PRAGMA temp_store = MEMORY");
    }

    /** Asks again how far the file is: another trainer may have been quicker. */
    private static long migrated(Sql sql) throws SQLException {
        long version = sql.number("PRAGMA user_version");
        for (long next = version + 1; next <= SCHEMA_VERSION; next++) {
            for (String statement : script(next).split(";", -1)) {
                if (!statement.isBlank()) {
                    sql.run(statement);
                }
            }
            sql.run("PRAGMA user_version = " + next);
        }
        sql.run("PRAGMA application_id = " + APPLICATION_ID);
        return SCHEMA_VERSION;
    }

    /** The statements of one step, without what they say about themselves. */
    private static String script(long version) {
        String name = "schema-" + version + ".sql";
        try (InputStream stream = Objects.requireNonNull(LogbookFile.class.getResourceAsStream(name), name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replaceAll("(?m)^--.*$", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
