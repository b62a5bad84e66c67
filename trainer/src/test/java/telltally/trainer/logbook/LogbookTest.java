package telltally.trainer.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteErrorCode;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;
import telltally.trainer.logbook.LogbookException.Reason;

class LogbookTest {
    @TempDir
    private Path folder = Path.of("");

    private Learner enrolled(Logbook logbook, String name) throws LogbookException {
        return logbook.enrol(name, SampleEntries.MORNING).orElseThrow();
    }

    /** What opening the folder's file is refused for; the file must be the same afterwards. */
    private LogbookException refused() throws IOException {
        byte[] before = Files.readAllBytes(Logbook.fileIn(folder));
        LogbookException[] thrown = new LogbookException[1];
        assertThatThrownBy(() -> Logbook.open(folder, 0).close())
                .isInstanceOfSatisfying(LogbookException.class, each -> thrown[0] = each);
        assertThat(Files.readAllBytes(Logbook.fileIn(folder)))
                .as("left as it was")
                .isEqualTo(before);
        assertThat(thrown[0].getMessage()).doesNotContain("\n").startsWith(folder.toString());
        return thrown[0];
    }

    private void frozen(String name) throws IOException {
        try (InputStream stream = Objects.requireNonNull(getClass().getResourceAsStream(name), name)) {
            Files.write(Logbook.fileIn(folder), stream.readAllBytes());
        }
    }

    private void sql(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + Logbook.fileIn(folder));
                var plain = connection.createStatement()) {
            for (String statement : statements) {
                plain.execute(statement);
            }
        }
    }

    @Nested
    class Answers {
        @Test
        void are_there_again_when_the_file_is_opened_again() throws LogbookException {
            DrillEntry drill = SampleEntries.drill("written codes:8@5400");
            LessonEntry lesson = SampleEntries.lesson();
            Learner mira;
            try (Logbook logbook = Logbook.open(folder)) {
                mira = enrolled(logbook, "Mira");
                logbook.write(mira, drill);
                logbook.write(mira, lesson);
            }
            try (Logbook logbook = Logbook.open(folder)) {
                assertThat(logbook.learners()).containsExactly(mira);
                assertThat(logbook.drills(mira)).containsExactly(drill);
                assertThat(logbook.lessons(mira)).containsExactly(lesson);
                assertThat(logbook.faults()).isEmpty();
            }
        }

        @Test
        void belong_to_one_learner_and_stay_in_order() throws LogbookException {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner mira = enrolled(logbook, "Mira");
                Learner jon = enrolled(logbook, "Jon");
                for (String given : List.of("written codes:8@1", "none", "written codes:9@2")) {
                    logbook.write(mira, SampleEntries.drill(given));
                    logbook.write(jon, SampleEntries.drill("chosen 1"));
                }
                assertThat(logbook.drills(mira))
                        .extracting(DrillEntry::given)
                        .containsExactly("written codes:8@1", "none", "written codes:9@2");
                assertThat(logbook.drills(jon)).hasSize(3);
            }
        }

        @Test
        void that_were_given_twice_are_refused_whole() throws LogbookException {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner mira = enrolled(logbook, "Mira");
                DrillEntry drill = SampleEntries.drill("none");
                logbook.write(mira, drill);
                assertThatThrownBy(() -> logbook.write(mira, drill)).isInstanceOf(IllegalStateException.class);
                assertThat(logbook.drills(mira)).containsExactly(drill);
            }
        }

        @Test
        void about_a_skill_that_is_no_more_are_passed_over_and_kept() throws LogbookException, SQLException {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner mira = enrolled(logbook, "Mira");
                logbook.write(mira, SampleEntries.drill("none"));
                sql("UPDATE drill SET skill = 'whistle-along'", "UPDATE credit SET skill = 'whistle-along'");
                assertThat(logbook.drills(mira)).isEmpty();
            }
        }
    }

    @Nested
    class Learners {
        @ParameterizedTest
        @ValueSource(strings = {"mira", " MIRA ", "Ｍira"})
        void cannot_have_the_same_name_in_other_letters(String name) throws LogbookException {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner mira = enrolled(logbook, "Mira");
                assertThat(logbook.enrol(name, SampleEntries.MORNING)).isEmpty();
                assertThat(logbook.find(name)).contains(mira);
            }
        }

        @Test
        void have_names_of_any_script_with_blanks_tidied() throws LogbookException {
            try (Logbook logbook = Logbook.open(folder)) {
                assertThat(enrolled(logbook, "  Åsa   Öberg ").name()).isEqualTo("Åsa Öberg");
                assertThat(enrolled(logbook, "李 明").name()).isEqualTo("李 明");
                assertThat(enrolled(logbook, "O'Hara; DROP TABLE learner").name())
                        .startsWith("O'Hara");
                assertThat(logbook.learners()).hasSize(3);
            }
        }

        @Test
        void need_a_name_that_can_be_read() {
            assertThat(Learner.fault(" \t ")).contains(Learner.NameFault.EMPTY);
            assertThat(Learner.fault("x".repeat(61))).contains(Learner.NameFault.TOO_LONG);
            assertThat(Learner.fault("a\u0000b")).contains(Learner.NameFault.UNPRINTABLE);
            assertThat(Learner.fault("a\u202eb")).contains(Learner.NameFault.UNPRINTABLE);
            assertThat(Learner.fault("x".repeat(60))).isEmpty();
        }

        @Test
        void that_are_forgotten_leave_no_trace_in_the_folder() throws LogbookException, IOException {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner gone = enrolled(logbook, "Zebulon Quagmire");
                Learner stays = enrolled(logbook, "Mira");
                for (int i = 0; i < 15; i++) {
                    logbook.write(gone, SampleEntries.drill("written codes:7777" + i + "@5400"));
                    logbook.write(gone, SampleEntries.lesson());
                    logbook.write(stays, SampleEntries.drill("none"));
                }
                assertThat(bytesOfFolder()).contains("Zebulon").contains("7777");

                logbook.forget(gone);

                assertThat(logbook.learners()).containsExactly(stays);
                assertThat(logbook.drills(stays)).hasSize(15);
                assertThat(bytesOfFolder().toLowerCase(Locale.ROOT))
                        .doesNotContain("zebulon")
                        .doesNotContain("7777")
                        .contains("mira");
            }
        }

        @Test
        void that_another_trainer_has_deleted_are_told_as_gone() throws LogbookException {
            try (Logbook here = Logbook.open(folder);
                    Logbook there = Logbook.open(folder)) {
                Learner mira = enrolled(here, "Mira");
                there.forget(mira);
                assertThatThrownBy(() -> here.write(mira, SampleEntries.drill("none")))
                        .isInstanceOfSatisfying(
                                LogbookException.class,
                                reason -> assertThat(reason.reason()).isEqualTo(Reason.LEARNER_GONE));
            }
        }

        /** Every byte of every file, so that text in them can be found. */
        private String bytesOfFolder() throws IOException {
            StringBuilder bytes = new StringBuilder();
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    bytes.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
            return bytes.toString();
        }
    }

    @Nested
    class The_file {
        @Test
        void of_the_first_schema_are_brought_up_to_date_with_nothing_lost() throws Exception {
            frozen("logbook-1.sqlite");
            try (Logbook logbook = Logbook.open(folder)) {
                assertThat(logbook.learners()).extracting(Learner::name).containsExactly("Mira", "Åsa Öberg");
                List<DrillEntry> drills = logbook.drills(logbook.learners().get(0));
                assertThat(drills).extracting(DrillEntry::right).containsExactly(false, true);
                assertThat(drills.get(0).credits())
                        .containsExactly(new Credit(Skill.COUNT_A_DIGIT, new Level(4), "9", false));
                DrillEntry notScored = logbook.drills(logbook.learners().get(1)).get(0);
                assertThat(notScored.scored()).isFalse();
                assertThat(notScored.credits()).isEmpty();
                assertThat(logbook.lessons(logbook.learners().get(0)).get(0).lines())
                        .hasSize(2);
                logbook.write(logbook.learners().get(0), SampleEntries.drill("none"));
                assertThat(logbook.faults()).isEmpty();
            }
        }

        @Test
        void of_a_newer_schema_are_refused() throws Exception {
            Logbook.open(folder).close();
            sql("PRAGMA user_version = 99");
            LogbookException reason = refused();
            assertThat(reason.reason()).isEqualTo(Reason.NEWER);
            assertThat(reason).hasMessageContaining("its schema is 99");
        }

        @Test
        void of_another_program_are_refused() throws Exception {
            sql("CREATE TABLE stamps (id INTEGER PRIMARY KEY)");
            assertThat(refused().reason()).isEqualTo(Reason.FOREIGN);
        }

        @Test
        void that_are_no_database_are_refused() throws Exception {
            Files.writeString(Logbook.fileIn(folder), "Dear diary, ".repeat(1000));
            assertThat(refused().reason()).isEqualTo(Reason.DAMAGED);
        }

        @Test
        void with_pages_overwritten_are_refused() throws Exception {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner mira = enrolled(logbook, "Mira");
                for (int i = 0; i < 30; i++) {
                    logbook.write(mira, SampleEntries.drill("none"));
                }
            }
            byte[] bytes = Files.readAllBytes(Logbook.fileIn(folder));
            Arrays.fill(bytes, 8192, bytes.length - 4096, (byte) 0x5a);
            Files.write(Logbook.fileIn(folder), bytes);
            assertThat(refused().reason()).isEqualTo(Reason.DAMAGED);
        }

        @Test
        void that_were_cut_off_are_refused() throws Exception {
            frozen("logbook-1.sqlite");
            byte[] bytes = Files.readAllBytes(Logbook.fileIn(folder));
            Files.write(Logbook.fileIn(folder), Arrays.copyOf(bytes, 16384));
            assertThat(refused().reason()).isEqualTo(Reason.DAMAGED);
        }

        @Test
        void without_a_byte_in_them_are_begun() throws Exception {
            Files.createFile(Logbook.fileIn(folder));
            try (Logbook logbook = Logbook.open(folder)) {
                assertThat(logbook.learners()).isEmpty();
            }
        }

        @Test
        void that_another_program_keeps_to_itself_are_told_as_locked() throws Exception {
            Logbook.open(folder).close();
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + Logbook.fileIn(folder));
                    var plain = other.createStatement()) {
                plain.execute("BEGIN EXCLUSIVE");
                assertThat(refused().reason()).isEqualTo(Reason.LOCKED);
                plain.execute("ROLLBACK");
            }
            Logbook.open(folder, 0).close();
        }

        @Test
        void cannot_be_made_below_a_file() throws Exception {
            Path file = Files.createFile(folder.resolve("no-folder"));
            assertThatThrownBy(() -> Logbook.open(file))
                    .isInstanceOfSatisfying(
                            LogbookException.class,
                            reason -> assertThat(reason.reason()).isEqualTo(Reason.NO_FOLDER));
        }

        @ParameterizedTest
        @ValueSource(strings = {"with blanks", "with ? and %41 & #", "ünïcode 明", "a;b='c'"})
        void may_lie_in_folders_of_any_name(String name) throws Exception {
            Path odd = folder.resolve(name);
            try (Logbook logbook = Logbook.open(odd)) {
                enrolled(logbook, "Mira");
            }
            assertThat(Logbook.fileIn(odd)).exists();
        }

        @Test
        void are_one_file_as_soon_as_nobody_writes() throws Exception {
            try (Logbook logbook = Logbook.open(folder)) {
                enrolled(logbook, "Mira");
                try (Stream<Path> files = Files.list(folder)) {
                    assertThat(files).containsExactly(Logbook.fileIn(folder));
                }
            }
        }

        /** What cannot be brought about everywhere, such as a full disk, by the codes of sqlite.org/rescode.html. */
        @Test
        void that_fail_otherwise_are_told_by_the_codes_of_the_database() {
            assertThat(reason(SQLiteErrorCode.SQLITE_READONLY)).isEqualTo(Reason.READ_ONLY);
            assertThat(reason(SQLiteErrorCode.SQLITE_READONLY_DBMOVED)).isEqualTo(Reason.READ_ONLY);
            assertThat(reason(SQLiteErrorCode.SQLITE_FULL)).isEqualTo(Reason.FULL);
            assertThat(reason(SQLiteErrorCode.SQLITE_IOERR_WRITE)).isEqualTo(Reason.DISK);
            assertThat(reason(SQLiteErrorCode.SQLITE_CANTOPEN)).isEqualTo(Reason.NO_FOLDER);
            assertThatThrownBy(() -> reason(SQLiteErrorCode.SQLITE_MISUSE)).isInstanceOf(IllegalStateException.class);
        }

        private Reason reason(SQLiteErrorCode code) {
            return LogbookException.of(folder, new SQLException(code.message, "", code.code))
                    .reason();
        }
    }

    @Nested
    class Two_trainers {
        @Test
        void write_at_the_same_time_and_nothing_is_lost() throws LogbookException {
            List<CompletableFuture<Integer>> trainers = new ArrayList<>();
            for (String name : List.of("Mira", "Jon")) {
                trainers.add(CompletableFuture.supplyAsync(() -> practise(name)));
            }
            assertThat(trainers).extracting(CompletableFuture::join).containsExactly(10, 10);
            try (Logbook logbook = Logbook.open(folder)) {
                for (Learner learner : logbook.learners()) {
                    assertThat(logbook.drills(learner)).hasSize(10);
                }
                assertThat(logbook.learners()).hasSize(2);
                assertThat(logbook.faults()).isEmpty();
            }
        }

        private int practise(String name) {
            try (Logbook logbook = Logbook.open(folder)) {
                Learner learner = enrolled(logbook, name);
                for (int i = 0; i < 10; i++) {
                    logbook.write(learner, SampleEntries.drill("none"));
                }
                return logbook.drills(learner).size();
            } catch (LogbookException e) {
                throw new AssertionError(e);
            }
        }
    }
}
