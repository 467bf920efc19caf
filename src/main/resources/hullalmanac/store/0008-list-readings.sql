-- How the columns of lists that were brought in were understood: headings and fields from left to right, parted by |.
CREATE TABLE list_reading (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  name TEXT NOT NULL,
  headings TEXT NOT NULL,
  fields TEXT NOT NULL
) STRICT;
