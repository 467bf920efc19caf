-- A reading of air and surface at a step that lays a coat: all four, or none.
ALTER TABLE step ADD COLUMN air_celsius REAL;
ALTER TABLE step ADD COLUMN humidity REAL;
ALTER TABLE step ADD COLUMN surface_celsius REAL;
ALTER TABLE step ADD COLUMN climate_at TEXT CHECK (
  (climate_at IS NULL) = (air_celsius IS NULL)
  AND (climate_at IS NULL) = (humidity IS NULL)
  AND (climate_at IS NULL) = (surface_celsius IS NULL)
);
