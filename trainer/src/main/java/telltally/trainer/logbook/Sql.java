package telltally.trainer.logbook;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Statements on one connection, without the ceremony. */
record Sql(Connection connection) {
    /** Makes a value of the row that the result stands at. */
    interface Row<T> {
        T of(ResultSet row) throws SQLException;
    }

    interface Work<T> {
        T done() throws SQLException;
    }

    void run(String statement) throws SQLException {
        try (var plain = connection.createStatement()) {
            plain.execute(statement);
        }
    }

    /** @return how many rows were changed */
    int change(String statement, Object... values) throws SQLException {
        try (PreparedStatement prepared = prepared(statement, values)) {
            return prepared.executeUpdate();
        }
    }

    /** @return the id of the row that was added */
    long add(String statement, Object... values) throws SQLException {
        change(statement, values);
        return one("SELECT last_insert_rowid()", row -> row.getLong(1));
    }

    <T> List<T> all(String question, Row<T> row, Object... values) throws SQLException {
        try (PreparedStatement prepared = prepared(question, values);
                ResultSet results = prepared.executeQuery()) {
            List<T> found = new ArrayList<>();
            while (results.next()) {
                found.add(row.of(results));
            }
            return found;
        }
    }

    /** The first row; there has to be one. */
    <T> T one(String question, Row<T> row, Object... values) throws SQLException {
        return all(question, row, values).get(0);
    }

    long number(String question) throws SQLException {
        return one(question, row -> row.getLong(1));
    }

    /** All of it or nothing. Nobody else writes between its reads and its writes. */
    <T> T whole(Work<T> work) throws SQLException {
        run("BEGIN IMMEDIATE");
        try {
            T result = work.done();
            run("COMMIT");
            return result;
        } catch (SQLException | RuntimeException failure) {
            undo(failure);
            throw failure;
        }
    }

    private void undo(Exception failure) {
        try {
            run("ROLLBACK");
        } catch (SQLException alreadyUndone) {
            // SQLite has rolled back by itself where the disk is full or fails; the first failure is the one to tell.
            failure.addSuppressed(alreadyUndone);
        }
    }

    private PreparedStatement prepared(String statement, Object... values) throws SQLException {
        PreparedStatement prepared = connection.prepareStatement(statement);
        for (int i = 0; i < values.length; i++) {
            prepared.setObject(i + 1, values[i]);
        }
        return prepared;
    }
}
