-- What owners were told of boats that fall due: what it was about, and what was said when.
CREATE TABLE reminder (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  party_id INTEGER REFERENCES party
) STRICT;
CREATE INDEX reminder_boat ON reminder (boat_id);
CREATE INDEX reminder_party ON reminder (party_id);

CREATE TABLE reminder_about (
  reminder_id INTEGER NOT NULL REFERENCES reminder ON DELETE CASCADE,
  place INTEGER NOT NULL,
  coat_id INTEGER REFERENCES coat,
  duty_id INTEGER REFERENCES duty,
  care_plan_id INTEGER REFERENCES care_plan,
  due_on TEXT NOT NULL,
  PRIMARY KEY (reminder_id, place),
  CHECK ((coat_id IS NOT NULL) + (duty_id IS NOT NULL) + (care_plan_id IS NOT NULL) = 1)
) STRICT;
CREATE INDEX reminder_about_coat ON reminder_about (coat_id);
CREATE INDEX reminder_about_duty ON reminder_about (duty_id);
CREATE INDEX reminder_about_care_plan ON reminder_about (care_plan_id);

CREATE TABLE reminder_said (
  reminder_id INTEGER NOT NULL REFERENCES reminder ON DELETE CASCADE,
  place INTEGER NOT NULL,
  day TEXT NOT NULL,
  what TEXT NOT NULL,
  way TEXT,
  ask_after TEXT,
  words TEXT NOT NULL,
  PRIMARY KEY (reminder_id, place)
) STRICT;
