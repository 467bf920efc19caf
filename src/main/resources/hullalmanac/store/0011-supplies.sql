-- The day on which somebody looked what is left in a bottle; how long an opened one keeps.
ALTER TABLE bottle ADD COLUMN left_on TEXT CHECK (left_on IS NULL OR left_ml IS NOT NULL);
ALTER TABLE product ADD COLUMN open_months INTEGER;
