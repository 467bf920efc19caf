-- Whether something was seen before or after the correcting work of its visit; empty: not said.
ALTER TABLE finding ADD COLUMN moment TEXT CHECK (moment IN ('before', 'after'));
