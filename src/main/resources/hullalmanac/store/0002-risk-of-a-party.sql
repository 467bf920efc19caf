-- The chance of a bare coat at which an owner wants it renewed; empty: as the business has it.
ALTER TABLE party ADD COLUMN risk REAL;
