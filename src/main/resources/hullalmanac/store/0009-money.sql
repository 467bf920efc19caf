-- Money: how a business asks for it, rates, estimates, invoices, payments, trips and expenses.
-- Amounts are minor units of the business's currency; quantities and percents exact decimal text.

ALTER TABLE business ADD COLUMN tax_inclusive INTEGER NOT NULL DEFAULT 0 CHECK (tax_inclusive IN (0, 1));
ALTER TABLE business ADD COLUMN tax_at TEXT NOT NULL DEFAULT 'total';
ALTER TABLE business ADD COLUMN rounding TEXT NOT NULL DEFAULT 'half-up';
ALTER TABLE business ADD COLUMN taxes TEXT NOT NULL DEFAULT '';
ALTER TABLE business ADD COLUMN invoice_prefix TEXT NOT NULL DEFAULT '';
ALTER TABLE business ADD COLUMN credit_prefix TEXT NOT NULL DEFAULT '';
ALTER TABLE business ADD COLUMN number_year TEXT NOT NULL DEFAULT 'full';
ALTER TABLE business ADD COLUMN number_digits INTEGER NOT NULL DEFAULT 4;
ALTER TABLE business ADD COLUMN days_to_pay INTEGER NOT NULL DEFAULT 14;
ALTER TABLE business ADD COLUMN hour_minor INTEGER;
ALTER TABLE business ADD COLUMN least_minor INTEGER;
ALTER TABLE business ADD COLUMN distance_minor INTEGER;

CREATE TABLE rate (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  service TEXT NOT NULL,
  steps TEXT NOT NULL,
  extent TEXT NOT NULL,
  unit TEXT NOT NULL,
  condition TEXT,
  type TEXT,
  from_mm INTEGER,
  below_mm INTEGER,
  low_minor INTEGER NOT NULL CHECK (low_minor >= 0),
  high_minor INTEGER NOT NULL CHECK (high_minor >= low_minor),
  note TEXT NOT NULL
) STRICT;

CREATE TABLE estimate (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  boat_id INTEGER NOT NULL REFERENCES boat,
  party_id INTEGER REFERENCES party,
  day TEXT NOT NULL,
  valid_until TEXT NOT NULL,
  deposit_percent TEXT,
  deposit_minor INTEGER,
  tax_inclusive INTEGER NOT NULL CHECK (tax_inclusive IN (0, 1)),
  tax_at TEXT NOT NULL,
  rounding TEXT NOT NULL,
  state TEXT NOT NULL,
  answered_on TEXT,
  answer_option TEXT,
  answer_note TEXT,
  signed_by TEXT,
  signature TEXT,
  visit_id INTEGER REFERENCES visit,
  note TEXT NOT NULL,
  CHECK ((answered_on IS NULL) = (answer_option IS NULL)
    AND (answered_on IS NULL) = (answer_note IS NULL)
    AND (answered_on IS NULL) = (signed_by IS NULL))
) STRICT;
CREATE INDEX estimate_boat ON estimate (boat_id);
CREATE INDEX estimate_party ON estimate (party_id);
CREATE INDEX estimate_visit ON estimate (visit_id);

CREATE TABLE estimate_expectation (
  estimate_id INTEGER NOT NULL REFERENCES estimate ON DELETE CASCADE,
  place INTEGER NOT NULL,
  result TEXT NOT NULL,
  words TEXT NOT NULL,
  PRIMARY KEY (estimate_id, place)
) STRICT;

CREATE TABLE estimate_option (
  estimate_id INTEGER NOT NULL REFERENCES estimate ON DELETE CASCADE,
  place INTEGER NOT NULL,
  name TEXT NOT NULL,
  steps TEXT NOT NULL,
  discount_percent TEXT,
  discount_minor INTEGER,
  note TEXT NOT NULL,
  PRIMARY KEY (estimate_id, place)
) STRICT;

CREATE TABLE estimate_surface (
  estimate_id INTEGER NOT NULL REFERENCES estimate ON DELETE CASCADE,
  place INTEGER NOT NULL,
  option_place INTEGER NOT NULL,
  surface_id INTEGER NOT NULL REFERENCES surface,
  PRIMARY KEY (estimate_id, place)
) STRICT;
CREATE INDEX estimate_surface_surface ON estimate_surface (surface_id);

CREATE TABLE estimate_line (
  estimate_id INTEGER NOT NULL REFERENCES estimate ON DELETE CASCADE,
  place INTEGER NOT NULL,
  option_place INTEGER NOT NULL,
  service TEXT NOT NULL,
  words TEXT NOT NULL,
  quantity TEXT NOT NULL,
  unit TEXT NOT NULL,
  price_minor INTEGER NOT NULL CHECK (price_minor >= 0),
  taxes TEXT NOT NULL,
  visit_id INTEGER REFERENCES visit,
  PRIMARY KEY (estimate_id, place)
) STRICT;
CREATE INDEX estimate_line_visit ON estimate_line (visit_id);

CREATE TABLE invoice (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  party_id INTEGER NOT NULL REFERENCES party,
  boat_id INTEGER REFERENCES boat,
  credits_id INTEGER REFERENCES invoice,
  discount_percent TEXT,
  discount_minor INTEGER,
  tax_inclusive INTEGER NOT NULL CHECK (tax_inclusive IN (0, 1)),
  tax_at TEXT NOT NULL,
  rounding TEXT NOT NULL,
  series TEXT,
  sequence INTEGER CHECK (sequence >= 1),
  number TEXT UNIQUE,
  issued_on TEXT,
  due_on TEXT,
  issued_to TEXT,
  note TEXT NOT NULL,
  UNIQUE (series, sequence),
  CHECK ((number IS NULL) = (series IS NULL) AND (number IS NULL) = (sequence IS NULL)
    AND (number IS NULL) = (issued_on IS NULL) AND (number IS NULL) = (due_on IS NULL)
    AND (number IS NULL) = (issued_to IS NULL))
) STRICT;
CREATE INDEX invoice_party ON invoice (party_id);
CREATE INDEX invoice_boat ON invoice (boat_id);
CREATE INDEX invoice_credits ON invoice (credits_id);

CREATE TABLE invoice_line (
  invoice_id INTEGER NOT NULL REFERENCES invoice ON DELETE CASCADE,
  place INTEGER NOT NULL,
  service TEXT NOT NULL,
  words TEXT NOT NULL,
  quantity TEXT NOT NULL,
  unit TEXT NOT NULL,
  price_minor INTEGER NOT NULL CHECK (price_minor >= 0),
  taxes TEXT NOT NULL,
  visit_id INTEGER REFERENCES visit,
  PRIMARY KEY (invoice_id, place)
) STRICT;
CREATE INDEX invoice_line_visit ON invoice_line (visit_id);

-- What was issued stays, whoever asks. Lines are written before their invoice, so that those of an
-- issued one can be put in once and never again. Each trigger stands on one line: a semicolon at the
-- end of a line ends a statement here.
CREATE TRIGGER invoice_stays BEFORE UPDATE ON invoice WHEN OLD.number IS NOT NULL BEGIN SELECT RAISE(ABORT, 'an issued invoice stays'); END;
CREATE TRIGGER invoice_is_kept BEFORE DELETE ON invoice WHEN OLD.number IS NOT NULL BEGIN SELECT RAISE(ABORT, 'an issued invoice stays'); END;
CREATE TRIGGER invoice_line_stays BEFORE UPDATE ON invoice_line WHEN EXISTS (SELECT 1 FROM invoice WHERE id = OLD.invoice_id AND number IS NOT NULL) BEGIN SELECT RAISE(ABORT, 'an issued invoice stays'); END;
CREATE TRIGGER invoice_line_is_kept BEFORE DELETE ON invoice_line WHEN EXISTS (SELECT 1 FROM invoice WHERE id = OLD.invoice_id AND number IS NOT NULL) BEGIN SELECT RAISE(ABORT, 'an issued invoice stays'); END;
CREATE TRIGGER invoice_line_is_whole BEFORE INSERT ON invoice_line WHEN EXISTS (SELECT 1 FROM invoice WHERE id = NEW.invoice_id AND number IS NOT NULL) AND NOT EXISTS (SELECT 1 FROM invoice_line WHERE invoice_id = NEW.invoice_id AND place = NEW.place) BEGIN SELECT RAISE(ABORT, 'an issued invoice stays'); END;

CREATE TABLE payment (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  party_id INTEGER NOT NULL REFERENCES party,
  day TEXT NOT NULL,
  amount_minor INTEGER NOT NULL CHECK (amount_minor > 0),
  how TEXT NOT NULL,
  estimate_id INTEGER REFERENCES estimate,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX payment_party ON payment (party_id);
CREATE INDEX payment_estimate ON payment (estimate_id);

CREATE TABLE payment_use (
  payment_id INTEGER NOT NULL REFERENCES payment ON DELETE CASCADE,
  place INTEGER NOT NULL,
  became TEXT NOT NULL,
  invoice_id INTEGER REFERENCES invoice,
  amount_minor INTEGER NOT NULL CHECK (amount_minor > 0),
  day TEXT NOT NULL,
  PRIMARY KEY (payment_id, place)
) STRICT;
CREATE INDEX payment_use_invoice ON payment_use (invoice_id);

CREATE TABLE trip (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  day TEXT NOT NULL,
  metres INTEGER NOT NULL CHECK (metres > 0),
  minutes INTEGER,
  visit_id INTEGER REFERENCES visit,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX trip_visit ON trip (visit_id);

CREATE TABLE expense (
  id INTEGER PRIMARY KEY,
  key TEXT NOT NULL UNIQUE,
  day TEXT NOT NULL,
  sort TEXT NOT NULL,
  what TEXT NOT NULL,
  bought_from TEXT NOT NULL,
  amount_minor INTEGER NOT NULL CHECK (amount_minor > 0),
  tax_minor INTEGER,
  visit_id INTEGER REFERENCES visit,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX expense_visit ON expense (visit_id);
