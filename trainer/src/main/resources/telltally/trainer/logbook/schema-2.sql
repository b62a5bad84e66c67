-- An answer may say something about more than one skill, and what was sent is not always the answer that was expected.
CREATE TABLE credit (
  drill INTEGER NOT NULL REFERENCES drill ON DELETE CASCADE,
  place INTEGER NOT NULL,
  skill TEXT NOT NULL,
  level INTEGER NOT NULL,
  item TEXT NOT NULL,
  is_right INTEGER NOT NULL,
  PRIMARY KEY (drill, place)
) WITHOUT ROWID;
INSERT INTO credit (drill, place, skill, level, item, is_right)
  SELECT id, 0, skill, level, item, is_right FROM drill WHERE is_scored = 1;
ALTER TABLE drill ADD COLUMN expected TEXT NOT NULL DEFAULT '';
