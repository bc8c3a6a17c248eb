-- What the journal never does, the database itself refuses.

CREATE TRIGGER builds_start AFTER INSERT ON builds BEGIN
    INSERT INTO ends (build_id, entries, hash) VALUES (NEW.id, 0, NEW.hash);
END;

CREATE TRIGGER entries_follow AFTER INSERT ON entries BEGIN
    UPDATE ends SET entries = NEW.sequence, hash = NEW.hash WHERE build_id = NEW.build_id;
END;

-- INSERT OR REPLACE removes rows without firing a DELETE trigger, so that what exists is guarded on INSERT too.
CREATE TRIGGER builds_once BEFORE INSERT ON builds
WHEN EXISTS (SELECT 1 FROM builds WHERE id = NEW.id OR (machine_name = NEW.machine_name AND serial = NEW.serial)) BEGIN
    SELECT RAISE(ABORT, 'a build is started once');
END;

CREATE TRIGGER entries_in_order BEFORE INSERT ON entries
WHEN NEW.sequence IS NOT (SELECT entries + 1 FROM ends WHERE build_id = NEW.build_id)
  OR NEW.previous_hash IS NOT (SELECT hash FROM ends WHERE build_id = NEW.build_id)
  OR EXISTS (SELECT 1 FROM entries WHERE key = NEW.key) BEGIN
    SELECT RAISE(ABORT, 'an entry is put at the end of the record, once');
END;

CREATE TRIGGER photos_once BEFORE INSERT ON photos WHEN EXISTS (SELECT 1 FROM photos WHERE sha256 = NEW.sha256) BEGIN
    SELECT RAISE(ABORT, 'a photograph is kept once');
END;

CREATE TRIGGER ends_go_up BEFORE UPDATE ON ends
WHEN NOT EXISTS (SELECT 1 FROM entries WHERE build_id = NEW.build_id AND sequence = NEW.entries AND hash = NEW.hash)
  OR NEW.build_id <> OLD.build_id OR NEW.entries <> OLD.entries + 1 BEGIN
    SELECT RAISE(ABORT, 'the end of a record follows its entries');
END;

CREATE TRIGGER builds_not_changed BEFORE UPDATE ON builds BEGIN SELECT RAISE(ABORT, 'a build is never changed'); END;
CREATE TRIGGER builds_not_removed BEFORE DELETE ON builds BEGIN SELECT RAISE(ABORT, 'a build is never removed'); END;
CREATE TRIGGER entries_not_changed BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER entries_not_removed BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END;
CREATE TRIGGER ends_not_removed BEFORE DELETE ON ends BEGIN SELECT RAISE(ABORT, 'the end of a record is never removed'); END;
CREATE TRIGGER photos_not_changed BEFORE UPDATE ON photos BEGIN SELECT RAISE(ABORT, 'a photograph is never changed'); END;
CREATE TRIGGER photos_not_removed BEFORE DELETE ON photos BEGIN SELECT RAISE(ABORT, 'a photograph is never removed'); END;
CREATE TRIGGER seals_not_changed BEFORE UPDATE ON seals BEGIN SELECT RAISE(ABORT, 'a seal is never changed'); END;
CREATE TRIGGER seals_not_removed BEFORE DELETE ON seals BEGIN SELECT RAISE(ABORT, 'a seal is never removed'); END;
