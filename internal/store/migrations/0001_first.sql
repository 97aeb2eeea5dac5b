-- The first form of the file. Rows keep the order in which they were made (seq);
-- an id is a UUID of version 7; a mass is in nanograms; a date is an ISO 8601
-- calendar date; an instant is RFC 3339 in UTC; a flag is 0 or 1. What is always
-- read and written whole stands as JSON in one column.

CREATE TABLE singles (
  seq  INTEGER PRIMARY KEY,
  key  TEXT NOT NULL UNIQUE CHECK (key IN ('settings', 'equipment')),
  body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;

-- A related lift may come later in the same transaction, so that check waits.
CREATE TABLE lifts (
  seq        INTEGER PRIMARY KEY,
  key        TEXT NOT NULL UNIQUE CHECK (key <> ''),
  name       TEXT NOT NULL CHECK (name <> ''),
  aliases    TEXT NOT NULL CHECK (json_valid(aliases)),
  region     TEXT NOT NULL CHECK (region IN ('', 'lower', 'upper', 'trunk', 'whole')),
  pattern    TEXT NOT NULL,
  bar        TEXT NOT NULL,
  floor      INTEGER NOT NULL CHECK (floor IN (0, 1)),
  measure    TEXT NOT NULL CHECK (measure IN ('', 'load', 'reps', 'distance', 'calories', 'time', 'hold')),
  reps       TEXT NOT NULL CHECK (json_valid(reps)),
  related    TEXT REFERENCES lifts (key) ON DELETE RESTRICT DEFERRABLE INITIALLY DEFERRED,
  ratio_low  REAL NOT NULL,
  ratio_high REAL NOT NULL,
  source     TEXT NOT NULL,
  reference  TEXT NOT NULL CHECK (json_valid(reference)),
  own        INTEGER NOT NULL CHECK (own IN (0, 1)),
  hidden     INTEGER NOT NULL CHECK (hidden IN (0, 1))
) STRICT;
CREATE INDEX lifts_related ON lifts (related) WHERE related IS NOT NULL;

CREATE TABLE movements (
  seq            INTEGER PRIMARY KEY,
  key            TEXT NOT NULL UNIQUE CHECK (key <> ''),
  name           TEXT NOT NULL CHECK (name <> ''),
  region         TEXT NOT NULL CHECK (region IN ('', 'lower', 'upper', 'trunk', 'whole')),
  pattern        TEXT NOT NULL,
  measure        TEXT NOT NULL CHECK (measure IN ('', 'load', 'reps', 'distance', 'calories', 'time', 'hold')),
  implement      TEXT NOT NULL,
  linked         TEXT REFERENCES lifts (key) ON DELETE RESTRICT,
  reference_reps INTEGER NOT NULL CHECK (reference_reps >= 0),
  seconds        REAL NOT NULL CHECK (seconds >= 0),
  loads          TEXT NOT NULL CHECK (json_valid(loads)),
  own            INTEGER NOT NULL CHECK (own IN (0, 1)),
  hidden         INTEGER NOT NULL CHECK (hidden IN (0, 1))
) STRICT;
CREATE INDEX movements_linked ON movements (linked) WHERE linked IS NOT NULL;

CREATE TABLE finishers (
  seq    INTEGER PRIMARY KEY,
  key    TEXT NOT NULL UNIQUE CHECK (key <> ''),
  name   TEXT NOT NULL CHECK (name <> ''),
  muscle TEXT NOT NULL,
  region TEXT NOT NULL CHECK (region IN ('', 'lower', 'upper', 'trunk', 'whole')),
  spares TEXT NOT NULL,
  own    INTEGER NOT NULL CHECK (own IN (0, 1)),
  hidden INTEGER NOT NULL CHECK (hidden IN (0, 1))
) STRICT;

CREATE TABLE drills (
  seq     INTEGER PRIMARY KEY,
  key     TEXT NOT NULL UNIQUE CHECK (key <> ''),
  name    TEXT NOT NULL CHECK (name <> ''),
  pattern TEXT NOT NULL,
  dose    TEXT NOT NULL,
  own     INTEGER NOT NULL CHECK (own IN (0, 1)),
  hidden  INTEGER NOT NULL CHECK (hidden IN (0, 1))
) STRICT;

CREATE TABLE tracks (
  seq      INTEGER PRIMARY KEY,
  id       TEXT NOT NULL UNIQUE CHECK (id <> ''),
  name     TEXT NOT NULL CHECK (name <> ''),
  position INTEGER NOT NULL
) STRICT;

CREATE TABLE athletes (
  seq      INTEGER PRIMARY KEY,
  id       TEXT NOT NULL UNIQUE CHECK (id <> ''),
  name     TEXT NOT NULL CHECK (trim(name) <> ''),
  standard TEXT NOT NULL CHECK (standard IN ('M', 'W')),
  status   TEXT NOT NULL CHECK (status IN ('active', 'paused', 'archived')),
  unit     TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
  joined   TEXT CHECK (joined IS date(joined)),
  show     TEXT NOT NULL CHECK (show IN ('', 'name', 'initials', 'nothing')),
  display  TEXT NOT NULL,
  free     INTEGER NOT NULL CHECK (free BETWEEN 0 AND 127),
  want     INTEGER NOT NULL CHECK (want BETWEEN 0 AND 7),
  hand     TEXT NOT NULL CHECK (json_valid(hand)),
  back_on  TEXT CHECK (back_on IS date(back_on)),
  notes    TEXT NOT NULL
) STRICT;

CREATE TABLE moves (
  seq       INTEGER PRIMARY KEY,
  id        TEXT NOT NULL UNIQUE CHECK (id <> ''),
  athlete   TEXT NOT NULL REFERENCES athletes (id) ON DELETE RESTRICT,
  track     TEXT REFERENCES tracks (id) ON DELETE RESTRICT,
  first_day TEXT NOT NULL CHECK (first_day IS date(first_day)),
  made      TEXT NOT NULL
) STRICT;
CREATE INDEX moves_athlete ON moves (athlete);
CREATE INDEX moves_track ON moves (track) WHERE track IS NOT NULL;

CREATE TABLE restrictions (
  seq       INTEGER PRIMARY KEY,
  id        TEXT NOT NULL UNIQUE CHECK (id <> ''),
  athlete   TEXT NOT NULL REFERENCES athletes (id) ON DELETE RESTRICT,
  text      TEXT NOT NULL,
  region    TEXT NOT NULL CHECK (region IN ('', 'lower', 'upper', 'trunk', 'whole')),
  first_day TEXT CHECK (first_day IS date(first_day)),
  last_day  TEXT CHECK (last_day IS date(last_day))
) STRICT;
CREATE INDEX restrictions_athlete ON restrictions (athlete);

CREATE TABLE climbs (
  seq        INTEGER PRIMARY KEY,
  id         TEXT NOT NULL UNIQUE CHECK (id <> ''),
  name       TEXT NOT NULL CHECK (name <> ''),
  rungs      TEXT NOT NULL CHECK (json_valid(rungs)),
  heavy_line REAL NOT NULL,
  ceiling    REAL NOT NULL,
  strict     INTEGER NOT NULL CHECK (strict IN (0, 1)),
  built_in   INTEGER NOT NULL CHECK (built_in IN (0, 1))
) STRICT;

CREATE TABLE slots (
  seq     INTEGER PRIMARY KEY,
  id      TEXT NOT NULL UNIQUE CHECK (id <> ''),
  weekday INTEGER NOT NULL CHECK (weekday BETWEEN 0 AND 6),
  at      INTEGER NOT NULL CHECK (at BETWEEN 0 AND 1439),
  minutes INTEGER NOT NULL CHECK (minutes >= 0),
  name    TEXT NOT NULL,
  tracks  TEXT NOT NULL CHECK (json_valid(tracks))
) STRICT;

CREATE TABLE closures (
  seq       INTEGER PRIMARY KEY,
  id        TEXT NOT NULL UNIQUE CHECK (id <> ''),
  first_day TEXT NOT NULL CHECK (first_day IS date(first_day)),
  last_day  TEXT NOT NULL CHECK (last_day IS date(last_day) AND last_day >= first_day),
  name      TEXT NOT NULL
) STRICT;

CREATE TABLE cycles (
  seq   INTEGER PRIMARY KEY,
  id    TEXT NOT NULL UNIQUE CHECK (id <> ''),
  name  TEXT NOT NULL,
  start TEXT NOT NULL CHECK (start IS date(start)),
  body  TEXT NOT NULL CHECK (json_valid(body))
) STRICT;

-- The slot is a plain text: a class that was held keeps it when the timetable
-- has moved on.
CREATE TABLE classes (
  seq   INTEGER PRIMARY KEY,
  id    TEXT NOT NULL UNIQUE CHECK (id <> ''),
  slot  TEXT NOT NULL,
  date  TEXT NOT NULL CHECK (date IS date(date)),
  at    INTEGER NOT NULL CHECK (at BETWEEN 0 AND 1439),
  stage TEXT NOT NULL CHECK (stage IN ('set-up', 'climb', 'conditioning', 'finished')),
  body  TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE INDEX classes_open ON classes (stage) WHERE stage <> 'finished';

-- What a cycle, a class or a slot names inside its JSON, so that nothing in use
-- can be deleted. A day plan names its climb by name; a trigger guards that.
CREATE TABLE uses (
  seq      INTEGER PRIMARY KEY,
  cycle    TEXT REFERENCES cycles (id) ON DELETE CASCADE,
  class    TEXT REFERENCES classes (id) ON DELETE CASCADE,
  slot     TEXT REFERENCES slots (id) ON DELETE CASCADE,
  athlete  TEXT REFERENCES athletes (id) ON DELETE RESTRICT,
  track    TEXT REFERENCES tracks (id) ON DELETE RESTRICT,
  lift     TEXT REFERENCES lifts (key) ON DELETE RESTRICT,
  movement TEXT REFERENCES movements (key) ON DELETE RESTRICT,
  finisher TEXT REFERENCES finishers (key) ON DELETE RESTRICT,
  drill    TEXT REFERENCES drills (key) ON DELETE RESTRICT,
  climb    TEXT,
  CHECK ((cycle IS NOT NULL) + (class IS NOT NULL) + (slot IS NOT NULL) = 1),
  CHECK ((athlete IS NOT NULL) + (track IS NOT NULL) + (lift IS NOT NULL) + (movement IS NOT NULL)
       + (finisher IS NOT NULL) + (drill IS NOT NULL) + (climb IS NOT NULL) = 1)
) STRICT;
CREATE INDEX uses_cycle ON uses (cycle) WHERE cycle IS NOT NULL;
CREATE INDEX uses_class ON uses (class) WHERE class IS NOT NULL;
CREATE INDEX uses_slot ON uses (slot) WHERE slot IS NOT NULL;
CREATE INDEX uses_athlete ON uses (athlete) WHERE athlete IS NOT NULL;
CREATE INDEX uses_track ON uses (track) WHERE track IS NOT NULL;
CREATE INDEX uses_lift ON uses (lift) WHERE lift IS NOT NULL;
CREATE INDEX uses_movement ON uses (movement) WHERE movement IS NOT NULL;
CREATE INDEX uses_finisher ON uses (finisher) WHERE finisher IS NOT NULL;
CREATE INDEX uses_drill ON uses (drill) WHERE drill IS NOT NULL;
CREATE INDEX uses_climb ON uses (climb) WHERE climb IS NOT NULL;

CREATE TRIGGER climbs_in_use BEFORE DELETE ON climbs
WHEN EXISTS (SELECT 1 FROM uses WHERE climb = OLD.name)
BEGIN SELECT RAISE(ABORT, 'in use: a cycle names this climb'); END;

CREATE TRIGGER classes_started BEFORE DELETE ON classes
WHEN OLD.stage <> 'set-up'
BEGIN SELECT RAISE(ABORT, 'in use: the class has started'); END;

-- Results, bouts and overrides are only ever added; one may be voided, once.

CREATE TABLE results (
  seq         INTEGER PRIMARY KEY,
  id          TEXT NOT NULL UNIQUE CHECK (id <> ''),
  athlete     TEXT NOT NULL REFERENCES athletes (id) ON DELETE RESTRICT,
  lift        TEXT NOT NULL REFERENCES lifts (key) ON DELETE RESTRICT,
  reps        INTEGER NOT NULL CHECK (reps BETWEEN 1 AND 20),
  load        INTEGER NOT NULL CHECK (load BETWEEN 0 AND 1000000000000000),
  unit        TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
  amount      REAL NOT NULL,
  date        TEXT NOT NULL CHECK (date IS date(date)),
  source      TEXT NOT NULL CHECK (source IN ('tested', 'reported')),
  class       TEXT REFERENCES classes (id) ON DELETE RESTRICT,
  made        TEXT NOT NULL,
  void_at     TEXT,
  void_reason TEXT,
  CHECK (load > 0 OR amount > 0),
  CHECK ((void_at IS NULL) = (void_reason IS NULL))
) STRICT;
CREATE INDEX results_athlete ON results (athlete, lift, reps);
CREATE INDEX results_lift ON results (lift);
CREATE INDEX results_class ON results (class) WHERE class IS NOT NULL;

CREATE TRIGGER results_kept BEFORE DELETE ON results
BEGIN SELECT RAISE(ABORT, 'a result is never deleted; void it'); END;

CREATE TRIGGER results_void_once BEFORE UPDATE ON results
WHEN OLD.void_at IS NOT NULL OR NEW.void_at IS NULL
  OR (NEW.seq, NEW.id, NEW.athlete, NEW.lift, NEW.reps, NEW.load, NEW.unit,
      NEW.amount, NEW.date, NEW.source, NEW.class, NEW.made)
  IS NOT (OLD.seq, OLD.id, OLD.athlete, OLD.lift, OLD.reps, OLD.load, OLD.unit,
      OLD.amount, OLD.date, OLD.source, OLD.class, OLD.made)
BEGIN SELECT RAISE(ABORT, 'a result is never edited; it may be voided once'); END;

CREATE TABLE bouts (
  seq         INTEGER PRIMARY KEY,
  id          TEXT NOT NULL UNIQUE CHECK (id <> ''),
  athlete     TEXT NOT NULL REFERENCES athletes (id) ON DELETE RESTRICT,
  movement    TEXT NOT NULL REFERENCES movements (key) ON DELETE RESTRICT,
  load        INTEGER NOT NULL CHECK (load BETWEEN 1 AND 1000000000000000),
  unit        TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
  reps        INTEGER NOT NULL CHECK (reps BETWEEN 1 AND 10000),
  outcome     TEXT NOT NULL CHECK (outcome IN ('held', 'slowed', 'stopped')),
  date        TEXT NOT NULL CHECK (date IS date(date)),
  workout     TEXT NOT NULL,
  score       TEXT NOT NULL,
  class       TEXT REFERENCES classes (id) ON DELETE RESTRICT,
  made        TEXT NOT NULL,
  void_at     TEXT,
  void_reason TEXT,
  CHECK ((void_at IS NULL) = (void_reason IS NULL))
) STRICT;
CREATE INDEX bouts_athlete ON bouts (athlete);
CREATE INDEX bouts_movement ON bouts (movement);
CREATE INDEX bouts_class ON bouts (class) WHERE class IS NOT NULL;

CREATE TRIGGER bouts_kept BEFORE DELETE ON bouts
BEGIN SELECT RAISE(ABORT, 'a bout is never deleted; void it'); END;

CREATE TRIGGER bouts_void_once BEFORE UPDATE ON bouts
WHEN OLD.void_at IS NOT NULL OR NEW.void_at IS NULL
  OR (NEW.seq, NEW.id, NEW.athlete, NEW.movement, NEW.load, NEW.unit, NEW.reps,
      NEW.outcome, NEW.date, NEW.workout, NEW.score, NEW.class, NEW.made)
  IS NOT (OLD.seq, OLD.id, OLD.athlete, OLD.movement, OLD.load, OLD.unit, OLD.reps,
      OLD.outcome, OLD.date, OLD.workout, OLD.score, OLD.class, OLD.made)
BEGIN SELECT RAISE(ABORT, 'a bout is never edited; it may be voided once'); END;

CREATE TABLE overrides (
  seq         INTEGER PRIMARY KEY,
  id          TEXT NOT NULL UNIQUE CHECK (id <> ''),
  athlete     TEXT NOT NULL REFERENCES athletes (id) ON DELETE RESTRICT,
  movement    TEXT REFERENCES movements (key) ON DELETE RESTRICT,
  load        INTEGER NOT NULL CHECK (load BETWEEN 0 AND 1000000000000000),
  unit        TEXT NOT NULL CHECK (unit IN ('', 'kg', 'lb')),
  tier        TEXT NOT NULL CHECK (tier IN ('', 'full', 'mid', 'light', 'below')),
  share       REAL NOT NULL CHECK (share BETWEEN 0 AND 1),
  first_day   TEXT CHECK (first_day IS date(first_day)),
  last_day    TEXT CHECK (last_day IS date(last_day)),
  reason      TEXT NOT NULL,
  made        TEXT NOT NULL,
  void_at     TEXT,
  void_reason TEXT,
  CHECK ((load > 0) + (tier <> '') + (share > 0) = 1),
  CHECK ((void_at IS NULL) = (void_reason IS NULL))
) STRICT;
CREATE INDEX overrides_athlete ON overrides (athlete);
CREATE INDEX overrides_movement ON overrides (movement) WHERE movement IS NOT NULL;

CREATE TRIGGER overrides_kept BEFORE DELETE ON overrides
BEGIN SELECT RAISE(ABORT, 'an override is never deleted; void it'); END;

CREATE TRIGGER overrides_void_once BEFORE UPDATE ON overrides
WHEN OLD.void_at IS NOT NULL OR NEW.void_at IS NULL
  OR (NEW.seq, NEW.id, NEW.athlete, NEW.movement, NEW.load, NEW.unit, NEW.tier,
      NEW.share, NEW.first_day, NEW.last_day, NEW.reason, NEW.made)
  IS NOT (OLD.seq, OLD.id, OLD.athlete, OLD.movement, OLD.load, OLD.unit, OLD.tier,
      OLD.share, OLD.first_day, OLD.last_day, OLD.reason, OLD.made)
BEGIN SELECT RAISE(ABORT, 'an override is never edited; it may be voided once'); END;

-- The best result of an athlete for a lift and a rep count, the earlier of two
-- that are equal. A time for fixed work is better when smaller.
CREATE VIEW records AS
SELECT athlete, lift, reps, load, unit, amount, date, source, result
FROM (
  SELECT r.athlete, r.lift, r.reps, r.load, r.unit, r.amount, r.date, r.source, r.id AS result,
    row_number() OVER (
      PARTITION BY r.athlete, r.lift, r.reps
      ORDER BY r.load DESC, CASE l.measure WHEN 'time' THEN r.amount ELSE -r.amount END, r.date, r.seq
    ) AS place
  FROM results r JOIN lifts l ON l.key = r.lift
  WHERE r.void_at IS NULL
)
WHERE place = 1;
