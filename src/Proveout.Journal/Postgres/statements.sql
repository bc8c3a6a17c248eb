-- Each statement stands under its name. Texts are read as the bytes that are stored, so that the chain sees exactly those.

-- name: find-build
SELECT convert_to(id, 'UTF8'), convert_to(serial, 'UTF8'), convert_to(machine_name, 'UTF8'), convert_to(machine_fingerprint, 'UTF8'),
       convert_to(builder, 'UTF8'), convert_to(started, 'UTF8'), convert_to(hash, 'UTF8')
FROM proveout.builds WHERE id = @build;

-- name: find-build-by-serial
SELECT convert_to(id, 'UTF8'), convert_to(serial, 'UTF8'), convert_to(machine_name, 'UTF8'), convert_to(machine_fingerprint, 'UTF8'),
       convert_to(builder, 'UTF8'), convert_to(started, 'UTF8'), convert_to(hash, 'UTF8')
FROM proveout.builds WHERE machine_name = @machine_name AND serial = @serial;

-- name: list-builds
SELECT convert_to(id, 'UTF8'), convert_to(serial, 'UTF8'), convert_to(machine_name, 'UTF8'), convert_to(machine_fingerprint, 'UTF8'),
       convert_to(builder, 'UTF8'), convert_to(started, 'UTF8'), convert_to(hash, 'UTF8')
FROM proveout.builds ORDER BY ordinal;

-- name: add-build
INSERT INTO proveout.builds (id, serial, machine_name, machine_fingerprint, builder, started, hash)
VALUES (convert_from(@id, 'UTF8'), convert_from(@serial, 'UTF8'), convert_from(@machine_name, 'UTF8'), convert_from(@machine_fingerprint, 'UTF8'),
        convert_from(@builder, 'UTF8'), convert_from(@started, 'UTF8'), convert_from(@hash, 'UTF8'));

-- name: read-entries
SELECT convert_to(build_id, 'UTF8'), sequence, convert_to(key, 'UTF8'), convert_to(recorded, 'UTF8'), convert_to(person, 'UTF8'),
       convert_to(instrument, 'UTF8'), convert_to(content, 'UTF8'), convert_to(previous_hash, 'UTF8'), convert_to(hash, 'UTF8')
FROM proveout.entries WHERE build_id = @build AND sequence > @after ORDER BY sequence LIMIT NULLIF(@limit, -1);

-- name: find-entry-by-key
SELECT convert_to(build_id, 'UTF8'), sequence, convert_to(key, 'UTF8'), convert_to(recorded, 'UTF8'), convert_to(person, 'UTF8'),
       convert_to(instrument, 'UTF8'), convert_to(content, 'UTF8'), convert_to(previous_hash, 'UTF8'), convert_to(hash, 'UTF8')
FROM proveout.entries WHERE key = @key;

-- PostgreSQL cannot take a text apart as JSON that says U+0000 anywhere, and says so by failing: what a string looks like as JSON is sought instead.
-- Quotation marks inside of strings are escaped, so that only a whole name with its value fits.
-- name: find-file-entry
SELECT convert_to(build_id, 'UTF8'), sequence, convert_to(key, 'UTF8'), convert_to(recorded, 'UTF8'), convert_to(person, 'UTF8'),
       convert_to(instrument, 'UTF8'), convert_to(content, 'UTF8'), convert_to(previous_hash, 'UTF8'), convert_to(hash, 'UTF8')
FROM proveout.entries
WHERE build_id = @build AND strpos(content, '"kind":"' || @kind || '"') > 0 AND strpos(content, '"sha256":"' || @sha256 || '"') > 0
ORDER BY sequence LIMIT 1;

-- name: add-entry
INSERT INTO proveout.entries (build_id, sequence, key, recorded, person, instrument, content, previous_hash, hash)
VALUES (convert_from(@build, 'UTF8'), @sequence, convert_from(@key, 'UTF8'), convert_from(@recorded, 'UTF8'), convert_from(@person, 'UTF8'),
        convert_from(@instrument, 'UTF8'), convert_from(@content, 'UTF8'), convert_from(@previous_hash, 'UTF8'), convert_from(@hash, 'UTF8'));

-- name: find-end
SELECT entries, convert_to(hash, 'UTF8') FROM proveout.ends WHERE build_id = @build;

-- name: hold-end
SELECT entries, convert_to(hash, 'UTF8') FROM proveout.ends WHERE build_id = @build FOR NO KEY UPDATE;

-- name: size
SELECT count(*), coalesce(sum(entries), 0)::bigint FROM proveout.ends;

-- name: list-ends
SELECT build_id, entries FROM proveout.ends;

-- name: find-file
SELECT bytes FROM proveout.photos WHERE sha256 = @sha256;

-- name: has-file
SELECT 1 FROM proveout.photos WHERE sha256 = @sha256;

-- name: add-file
INSERT INTO proveout.photos (sha256, bytes) VALUES (@sha256, @bytes) ON CONFLICT DO NOTHING;

-- name: read-seals
SELECT convert_to(build_id, 'UTF8'), entries, hash, convert_to(sealed, 'UTF8'), person, public_key, signature
FROM proveout.seals WHERE build_id = @build ORDER BY entries, ordinal;

-- name: add-seal
INSERT INTO proveout.seals (build_id, entries, hash, sealed, person, public_key, signature)
VALUES (@build, @entries, @hash, convert_from(@sealed, 'UTF8'), @person, @public_key, @signature) ON CONFLICT DO NOTHING;

-- name: check-rows
SELECT 'entry ' || entries.sequence || ' refers to a build that is not there (' || entries.build_id || ')'
FROM proveout.entries LEFT JOIN proveout.builds ON builds.id = entries.build_id WHERE builds.id IS NULL
UNION ALL
SELECT 'build ' || builds.id || ' has no end' FROM proveout.builds LEFT JOIN proveout.ends ON ends.build_id = builds.id WHERE ends.build_id IS NULL
UNION ALL
SELECT 'photograph ' || sha256 || ' cannot be read as it was kept' FROM proveout.photos WHERE encode(sha256(bytes), 'hex') <> photos.sha256;

-- name: check-guards
SELECT 'the guard ' || wanted || ' of the tables is missing or switched off'
FROM unnest(ARRAY['builds_start', 'entries_in_order', 'entries_follow', 'ends_go_up', 'builds_kept', 'entries_kept', 'ends_kept', 'photos_kept', 'seals_kept'])
    AS wanted
WHERE NOT EXISTS (
    SELECT FROM pg_trigger JOIN pg_class ON pg_class.oid = tgrelid
    WHERE tgname = wanted AND tgenabled IN ('O', 'A') AND relnamespace = 'proveout'::regnamespace);

-- name: check-indexes
SELECT 'the index ' || relname || ' is not valid: PostgreSQL''s REINDEX makes it anew'
FROM pg_index JOIN pg_class ON pg_class.oid = indexrelid WHERE relnamespace = 'proveout'::regnamespace AND NOT indisvalid;
