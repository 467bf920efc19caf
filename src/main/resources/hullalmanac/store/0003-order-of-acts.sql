-- The order in which acts happened: a clock may be set back. And the changes of one row, found fast.
ALTER TABLE act ADD COLUMN place INTEGER NOT NULL DEFAULT 0;

UPDATE act SET place = (SELECT n FROM (SELECT id AS act_id, row_number() OVER (ORDER BY at, id) AS n FROM act)
WHERE act_id = act.id);

CREATE INDEX change_row ON change (table_name, row_id);
