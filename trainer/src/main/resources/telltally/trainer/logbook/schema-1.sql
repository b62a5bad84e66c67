-- Learners and what they answered.
CREATE TABLE learner (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  name_key TEXT NOT NULL UNIQUE,
  since TEXT NOT NULL
);
CREATE TABLE drill (
  id INTEGER PRIMARY KEY,
  uuid TEXT NOT NULL UNIQUE,
  learner INTEGER NOT NULL REFERENCES learner ON DELETE CASCADE,
  answered_at TEXT NOT NULL,
  skill TEXT NOT NULL,
  level INTEGER NOT NULL,
  item TEXT NOT NULL,
  seed INTEGER NOT NULL,
  generator INTEGER NOT NULL,
  program TEXT NOT NULL,
  format TEXT NOT NULL,
  display TEXT NOT NULL,
  sent TEXT NOT NULL,
  given TEXT NOT NULL,
  is_right INTEGER NOT NULL,
  is_scored INTEGER NOT NULL,
  answer_ns INTEGER NOT NULL,
  lamp_ns INTEGER NOT NULL,
  lag_ns INTEGER NOT NULL
);
CREATE INDEX drill_of_learner ON drill (learner, id);
CREATE TABLE lesson (
  id INTEGER PRIMARY KEY,
  uuid TEXT NOT NULL UNIQUE,
  learner INTEGER NOT NULL REFERENCES learner ON DELETE CASCADE,
  answered_at TEXT NOT NULL,
  lesson TEXT NOT NULL,
  seed INTEGER NOT NULL,
  generator INTEGER NOT NULL,
  program TEXT NOT NULL,
  format TEXT NOT NULL,
  display TEXT NOT NULL,
  codes_sent INTEGER NOT NULL,
  codes_right INTEGER NOT NULL,
  is_right INTEGER NOT NULL,
  is_scored INTEGER NOT NULL
);
CREATE INDEX lesson_of_learner ON lesson (learner, id);
CREATE TABLE lesson_line (
  lesson INTEGER NOT NULL REFERENCES lesson ON DELETE CASCADE,
  place INTEGER NOT NULL,
  segment TEXT NOT NULL,
  sent TEXT NOT NULL,
  written TEXT NOT NULL,
  errors TEXT NOT NULL,
  PRIMARY KEY (lesson, place)
) WITHOUT ROWID;
