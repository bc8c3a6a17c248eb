-- What the journal never does, the database itself refuses.

CREATE FUNCTION proveout.refuse() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0];
END $$;

CREATE FUNCTION proveout.begin_end() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    INSERT INTO proveout.ends (build_id, entries, hash) VALUES (NEW.id, 0, NEW.hash);
    RETURN NULL;
END $$;

CREATE FUNCTION proveout.require_next() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NOT EXISTS (SELECT FROM proveout.ends WHERE build_id = NEW.build_id AND entries + 1 = NEW.sequence AND hash = NEW.previous_hash) THEN
        RAISE EXCEPTION 'an entry is put at the end of the record, once';
    END IF;
    RETURN NEW;
END $$;

CREATE FUNCTION proveout.move_end() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    UPDATE proveout.ends SET entries = NEW.sequence, hash = NEW.hash WHERE build_id = NEW.build_id;
    RETURN NULL;
END $$;

CREATE FUNCTION proveout.require_entry() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    IF NEW.build_id <> OLD.build_id OR NEW.entries <> OLD.entries + 1
        OR NOT EXISTS (SELECT FROM proveout.entries WHERE build_id = NEW.build_id AND sequence = NEW.entries AND hash = NEW.hash) THEN
        RAISE EXCEPTION 'the end of a record follows its entries';
    END IF;
    RETURN NEW;
END $$;

CREATE TRIGGER builds_start AFTER INSERT ON proveout.builds FOR EACH ROW EXECUTE FUNCTION proveout.begin_end();
CREATE TRIGGER entries_in_order BEFORE INSERT ON proveout.entries FOR EACH ROW EXECUTE FUNCTION proveout.require_next();
CREATE TRIGGER entries_follow AFTER INSERT ON proveout.entries FOR EACH ROW EXECUTE FUNCTION proveout.move_end();
CREATE TRIGGER ends_go_up BEFORE UPDATE ON proveout.ends FOR EACH ROW EXECUTE FUNCTION proveout.require_entry();

-- For each statement, so that TRUNCATE and INSERT ... ON CONFLICT DO UPDATE are refused too.
CREATE TRIGGER builds_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON proveout.builds EXECUTE FUNCTION proveout.refuse('a build is never changed or removed');
CREATE TRIGGER entries_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON proveout.entries EXECUTE FUNCTION proveout.refuse('an entry is never changed or removed');
CREATE TRIGGER ends_kept BEFORE DELETE OR TRUNCATE ON proveout.ends EXECUTE FUNCTION proveout.refuse('the end of a record is never removed');
CREATE TRIGGER photos_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON proveout.photos EXECUTE FUNCTION proveout.refuse('a photograph is never changed or removed');
CREATE TRIGGER seals_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON proveout.seals EXECUTE FUNCTION proveout.refuse('a seal is never changed or removed');
