-- What a business sets: its letterhead, its habits, and the practice values that are its own.
ALTER TABLE business ADD COLUMN address TEXT NOT NULL DEFAULT '';
ALTER TABLE business ADD COLUMN tax_number TEXT NOT NULL DEFAULT '';
ALTER TABLE business ADD COLUMN paper TEXT NOT NULL DEFAULT 'a4';
ALTER TABLE business ADD COLUMN first_day INTEGER NOT NULL DEFAULT 1;
ALTER TABLE business ADD COLUMN lead_weeks INTEGER NOT NULL DEFAULT 10;
ALTER TABLE business ADD COLUMN practice TEXT NOT NULL DEFAULT '';
