-- How letters are worded. The fields in them stand in two braces.
CREATE TABLE wording (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL,
  language TEXT NOT NULL,
  subject TEXT NOT NULL,
  text TEXT NOT NULL,
  UNIQUE (kind, language)
) STRICT;
