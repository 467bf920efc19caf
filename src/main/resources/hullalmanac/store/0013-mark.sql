-- The mark on the letterhead: a picture among the photos.
ALTER TABLE business ADD COLUMN mark TEXT NOT NULL DEFAULT '';
