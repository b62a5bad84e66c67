package telltally.trainer.logbook;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import telltally.simulator.format.Segment;
import telltally.trainer.drill.Credit;
import telltally.trainer.drill.Level;
import telltally.trainer.drill.Skill;

/** How entries stand in the file. */
record EntryTable(Sql sql) {
    private static final DateTimeFormatter INSTANT = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final Map<String, Skill> SKILLS =
            Arrays.stream(Skill.values()).collect(Collectors.toUnmodifiableMap(EntryTable::key, skill -> skill));

    /** To the millisecond, in UTC. */
    static String text(Instant instant) {
        return INSTANT.format(instant);
    }

    /** As files write a skill. */
    static String key(Skill skill) {
        return skill.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Skill> skill(String key) {
        return Optional.ofNullable(SKILLS.get(key));
    }

    void add(Learner learner, DrillEntry entry) throws SQLException {
        Circumstances with = entry.circumstances();
        long id = sql.add(
                "INSERT INTO drill (uuid, learner, answered_at, skill, level, item, seed, generator, program, format,"
                        + " display, sent, expected, given, is_right, is_scored, answer_ns, lamp_ns, lag_ns)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry.id().toString(),
                learner.id(),
                text(entry.answeredAt()),
                key(entry.skill()),
                entry.level().value(),
                entry.item(),
                with.seed(),
                with.generator(),
                with.program(),
                with.format(),
                with.display(),
                entry.sent(),
                entry.expected(),
                entry.given(),
                entry.right(),
                entry.scored(),
                entry.timing().answerNanos(),
                entry.timing().lampNanos(),
                entry.timing().lagNanos());
        int place = 0;
        for (Credit credit : entry.credits()) {
            sql.change(
                    "INSERT INTO credit (drill, place, skill, level, item, is_right) VALUES (?, ?, ?, ?, ?, ?)",
                    id,
                    place++,
                    key(credit.skill()),
                    credit.level().value(),
                    credit.item(),
                    credit.right());
        }
    }

    void add(Learner learner, LessonEntry entry) throws SQLException {
        Circumstances with = entry.circumstances();
        long id = sql.add(
                "INSERT INTO lesson (uuid, learner, answered_at, lesson, seed, generator, program, format, display,"
                        + " codes_sent, codes_right, is_right, is_scored) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                entry.id().toString(),
                learner.id(),
                text(entry.answeredAt()),
                entry.lesson(),
                with.seed(),
                with.generator(),
                with.program(),
                with.format(),
                with.display(),
                entry.codesSent(),
                entry.codesRight(),
                entry.right(),
                entry.scored());
        int place = 0;
        for (LessonEntry.Line line : entry.lines()) {
            sql.change(
                    "INSERT INTO lesson_line (lesson, place, segment, sent, written, errors) VALUES (?, ?, ?, ?, ?, ?)",
                    id,
                    place++,
                    line.segment().key(),
                    line.sent(),
                    line.written(),
                    line.errors());
        }
    }

    /** Drills in the order answered. One about a skill that this program does not know any more is passed over. */
    List<DrillEntry> drills(Learner learner) throws SQLException {
        Map<Long, List<Optional<Credit>>> credits = sql
                .all(
                        "SELECT credit.drill, credit.skill, credit.level, credit.item, credit.is_right FROM credit"
                                + " JOIN drill ON drill.id = credit.drill WHERE drill.learner = ?"
                                + " ORDER BY credit.drill, credit.place",
                        row -> Map.entry(row.getLong(1), credit(row)),
                        learner.id())
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
        return sql
                .all(
                        "SELECT * FROM drill WHERE learner = ? ORDER BY id",
                        row -> drill(row, credits.getOrDefault(row.getLong("id"), List.of())),
                        learner.id())
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    List<LessonEntry> lessons(Learner learner) throws SQLException {
        return sql.all("SELECT * FROM lesson WHERE learner = ? ORDER BY id", this::lesson, learner.id());
    }

    private static Optional<Credit> credit(ResultSet row) throws SQLException {
        Level level = Level.nearest(row.getInt(3));
        String item = row.getString(4);
        boolean right = row.getBoolean(5);
        return skill(row.getString(2)).map(skill -> new Credit(skill, level, item, right));
    }

    private static Optional<DrillEntry> drill(ResultSet row, List<Optional<Credit>> credits) throws SQLException {
        Optional<Skill> skill = skill(row.getString("skill"));
        if (skill.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new DrillEntry(
                UUID.fromString(row.getString("uuid")),
                Instant.parse(row.getString("answered_at")),
                skill.get(),
                Level.nearest(row.getInt("level")),
                row.getString("item"),
                circumstances(row),
                row.getString("sent"),
                row.getString("expected"),
                row.getString("given"),
                row.getBoolean("is_right"),
                row.getBoolean("is_scored"),
                new DrillEntry.Timing(row.getLong("answer_ns"), row.getLong("lamp_ns"), row.getLong("lag_ns")),
                credits.stream().flatMap(Optional::stream).toList()));
    }

    private LessonEntry lesson(ResultSet row) throws SQLException {
        return new LessonEntry(
                UUID.fromString(row.getString("uuid")),
                Instant.parse(row.getString("answered_at")),
                row.getString("lesson"),
                circumstances(row),
                row.getInt("codes_sent"),
                row.getInt("codes_right"),
                row.getBoolean("is_right"),
                row.getBoolean("is_scored"),
                lines(row.getLong("id")));
    }

    private List<LessonEntry.Line> lines(long lesson) throws SQLException {
        return sql.all(
                "SELECT segment, sent, written, errors FROM lesson_line WHERE lesson = ? ORDER BY place",
                row -> new LessonEntry.Line(
                        segment(row.getString(1)), row.getString(2), row.getString(3), row.getString(4)),
                lesson);
    }

    private static Segment segment(String key) {
        return Arrays.stream(Segment.values())
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElse(Segment.CODES);
    }

    private static Circumstances circumstances(ResultSet row) throws SQLException {
        return new Circumstances(
                row.getLong("seed"),
                row.getInt("generator"),
                row.getString("program"),
                row.getString("format"),
                row.getString("display"));
    }
}
