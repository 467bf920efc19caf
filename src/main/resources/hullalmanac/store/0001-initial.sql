-- Step 1: everything a record holds. Ids are random 63-bit numbers, key is the person's own id,
-- days are ISO 8601 text, lengths millimetres, money minor units.

CREATE TABLE business (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  name TEXT NOT NULL,
  currency TEXT NOT NULL,
  units TEXT NOT NULL,
  day_order TEXT NOT NULL,
  risk REAL,
  as_of TEXT
) STRICT;

CREATE TABLE harbour (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  latitude REAL NOT NULL CHECK (latitude BETWEEN -90 AND 90),
  sunshine TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE party (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL,
  name TEXT NOT NULL,
  phone TEXT NOT NULL,
  email TEXT NOT NULL,
  address TEXT NOT NULL,
  language TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE boat (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  type TEXT NOT NULL,
  loa_mm INTEGER,
  beam_mm INTEGER,
  freeboard_mm INTEGER,
  hull_number TEXT NOT NULL,
  built INTEGER,
  use TEXT NOT NULL,
  status TEXT NOT NULL,
  known_from TEXT,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE role (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  party_id INTEGER NOT NULL REFERENCES party,
  kind TEXT NOT NULL,
  from_day TEXT NOT NULL,
  until_day TEXT
) STRICT;
CREATE INDEX role_boat ON role (boat_id);
CREATE INDEX role_party ON role (party_id);

CREATE TABLE surface (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  kind TEXT NOT NULL,
  side TEXT NOT NULL,
  name TEXT NOT NULL,
  finish TEXT NOT NULL,
  tone TEXT NOT NULL,
  attitude TEXT NOT NULL,
  made_year INTEGER,
  past TEXT NOT NULL,
  soot INTEGER NOT NULL CHECK (soot IN (0, 1)),
  interval_months REAL,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX surface_boat ON surface (boat_id);

CREATE TABLE berth (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  harbour_id INTEGER NOT NULL REFERENCES harbour,
  cover TEXT NOT NULL,
  water TEXT NOT NULL,
  from_day TEXT NOT NULL,
  until_day TEXT,
  yearly INTEGER NOT NULL CHECK (yearly IN (0, 1)),
  last_year INTEGER,
  bow INTEGER CHECK (bow BETWEEN 0 AND 359),
  place TEXT NOT NULL,
  pontoon_side TEXT NOT NULL,
  water_supply TEXT NOT NULL,
  power TEXT NOT NULL,
  hours TEXT NOT NULL,
  tide TEXT NOT NULL,
  runoff TEXT NOT NULL,
  secret_keys TEXT NOT NULL,
  secret_gate_code TEXT NOT NULL,
  secret_absence TEXT NOT NULL
) STRICT;
CREATE INDEX berth_boat ON berth (boat_id);
CREATE INDEX berth_harbour ON berth (harbour_id);

CREATE TABLE care_plan (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  work TEXT NOT NULL,
  every_weeks INTEGER NOT NULL CHECK (every_weeks BETWEEN 1 AND 104),
  months TEXT NOT NULL,
  price_minor INTEGER,
  from_day TEXT NOT NULL,
  until_day TEXT,
  skips TEXT NOT NULL
) STRICT;
CREATE INDEX care_plan_boat ON care_plan (boat_id);

CREATE TABLE product (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  kind TEXT NOT NULL,
  label_months REAL CHECK (label_months > 0),
  label_for_cars INTEGER NOT NULL CHECK (label_for_cars IN (0, 1)),
  limit_months REAL CHECK (limit_months > 0),
  wash TEXT,
  leaves_wax INTEGER NOT NULL CHECK (leaves_wax IN (0, 1)),
  non_slip INTEGER NOT NULL CHECK (non_slip IN (0, 1)),
  hazards TEXT NOT NULL,
  dwell_min INTEGER,
  dwell_max INTEGER,
  cure_hours INTEGER,
  min_celsius INTEGER,
  max_celsius INTEGER,
  max_humidity INTEGER,
  parts_water INTEGER,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE bottle (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  product_id INTEGER NOT NULL REFERENCES product,
  batch TEXT NOT NULL,
  opened_on TEXT,
  use_by TEXT,
  size_ml INTEGER,
  left_ml INTEGER
) STRICT;
CREATE INDEX bottle_product ON bottle (product_id);

CREATE TABLE visit (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  day TEXT NOT NULL,
  status TEXT NOT NULL,
  why TEXT NOT NULL,
  care_plan_id INTEGER REFERENCES care_plan,
  cancelled TEXT,
  handover TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX visit_boat ON visit (boat_id);
CREATE INDEX visit_care_plan ON visit (care_plan_id);

CREATE TABLE visit_surface (
  visit_id INTEGER NOT NULL REFERENCES visit ON DELETE CASCADE,
  place INTEGER NOT NULL,
  surface_id INTEGER NOT NULL REFERENCES surface,
  state TEXT NOT NULL,
  done_on TEXT,
  note TEXT NOT NULL,
  PRIMARY KEY (visit_id, place)
) STRICT;
CREATE INDEX visit_surface_surface ON visit_surface (surface_id);

CREATE TABLE visit_move (
  visit_id INTEGER NOT NULL REFERENCES visit ON DELETE CASCADE,
  place INTEGER NOT NULL,
  from_day TEXT NOT NULL,
  to_day TEXT NOT NULL,
  reason TEXT NOT NULL,
  PRIMARY KEY (visit_id, place)
) STRICT;

CREATE TABLE step (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  visit_id INTEGER NOT NULL REFERENCES visit,
  place INTEGER NOT NULL CHECK (place >= 1),
  kind TEXT NOT NULL,
  day TEXT NOT NULL,
  product_id INTEGER REFERENCES product,
  bottle_id INTEGER REFERENCES bottle,
  parts_water INTEGER,
  pad TEXT NOT NULL,
  speed TEXT NOT NULL,
  passes INTEGER,
  minutes INTEGER,
  helper_minutes INTEGER,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX step_visit ON step (visit_id);
CREATE INDEX step_product ON step (product_id);
CREATE INDEX step_bottle ON step (bottle_id);

CREATE TABLE step_surface (
  step_id INTEGER NOT NULL REFERENCES step ON DELETE CASCADE,
  place INTEGER NOT NULL,
  surface_id INTEGER NOT NULL REFERENCES surface,
  PRIMARY KEY (step_id, place)
) STRICT;
CREATE INDEX step_surface_surface ON step_surface (surface_id);

CREATE TABLE coat (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  surface_id INTEGER NOT NULL REFERENCES surface,
  product_id INTEGER NOT NULL REFERENCES product,
  laid_on TEXT,
  known_from TEXT,
  visit_id INTEGER REFERENCES visit,
  bottle_id INTEGER REFERENCES bottle,
  batch TEXT NOT NULL,
  layers INTEGER NOT NULL CHECK (layers BETWEEN 1 AND 9),
  over_id INTEGER REFERENCES coat,
  ended_on TEXT,
  ended_how TEXT,
  ended_seen TEXT,
  ended_reason TEXT,
  note TEXT NOT NULL,
  CHECK (laid_on IS NOT NULL OR known_from IS NOT NULL),
  CHECK ((ended_on IS NULL) = (ended_how IS NULL) AND (ended_on IS NULL) = (ended_seen IS NULL))
) STRICT;
CREATE INDEX coat_surface ON coat (surface_id);
CREATE INDEX coat_product ON coat (product_id);
CREATE INDEX coat_visit ON coat (visit_id);
CREATE INDEX coat_bottle ON coat (bottle_id);
CREATE INDEX coat_over ON coat (over_id);

CREATE TABLE duty (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  coat_id INTEGER NOT NULL REFERENCES coat,
  kind TEXT NOT NULL,
  due_on TEXT NOT NULL,
  done_on TEXT,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX duty_coat ON duty (coat_id);

CREATE TABLE finding (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  surface_id INTEGER NOT NULL REFERENCES surface,
  visit_id INTEGER REFERENCES visit,
  day TEXT NOT NULL,
  state TEXT NOT NULL,
  entered TEXT NOT NULL,
  what TEXT NOT NULL,
  value TEXT NOT NULL,
  scale TEXT,
  geometry TEXT,
  meter TEXT,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX finding_surface ON finding (surface_id);
CREATE INDEX finding_visit ON finding (visit_id);

CREATE TABLE gloss_reading (
  finding_id INTEGER NOT NULL REFERENCES finding ON DELETE CASCADE,
  place INTEGER NOT NULL,
  gloss REAL NOT NULL CHECK (gloss BETWEEN 0 AND 2000),
  PRIMARY KEY (finding_id, place)
) STRICT;

CREATE TABLE photo (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  surface_id INTEGER REFERENCES surface,
  visit_id INTEGER REFERENCES visit,
  taken_at TEXT,
  moment TEXT NOT NULL,
  file TEXT NOT NULL,
  caption TEXT NOT NULL
) STRICT;
CREATE INDEX photo_boat ON photo (boat_id);
CREATE INDEX photo_surface ON photo (surface_id);
CREATE INDEX photo_visit ON photo (visit_id);

-- The change log: an act is one change as a person sees it, a change is one row before and after.
CREATE TABLE act (
  id INTEGER PRIMARY KEY,
  at TEXT NOT NULL,
  device TEXT NOT NULL,
  what TEXT NOT NULL,
  schema_step INTEGER NOT NULL,
  undoes INTEGER REFERENCES act
) STRICT;

CREATE TABLE change (
  act_id INTEGER NOT NULL REFERENCES act,
  place INTEGER NOT NULL,
  table_name TEXT NOT NULL,
  row_id TEXT NOT NULL,
  before TEXT,
  after TEXT,
  PRIMARY KEY (act_id, place)
) STRICT, WITHOUT ROWID;
