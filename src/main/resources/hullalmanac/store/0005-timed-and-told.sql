-- Since when a step is being timed, in UTC; empty while it is not.
ALTER TABLE step ADD COLUMN timed_since TEXT;

-- Who was told of damage, and on which day; both empty: nobody yet.
ALTER TABLE finding ADD COLUMN told_whom TEXT;
ALTER TABLE finding ADD COLUMN told_on TEXT CHECK ((told_whom IS NULL) = (told_on IS NULL));
