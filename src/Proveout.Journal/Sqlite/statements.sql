-- Each statement stands under its name. Texts are read as the bytes that are stored, so that the chain sees exactly those.

-- name: find-build
SELECT CAST(id AS BLOB), CAST(serial AS BLOB), CAST(machine_name AS BLOB), CAST(machine_fingerprint AS BLOB), CAST(builder AS BLOB),
       CAST(started AS BLOB), CAST(hash AS BLOB)
FROM builds WHERE id = @build;

-- name: find-build-by-serial
SELECT CAST(id AS BLOB), CAST(serial AS BLOB), CAST(machine_name AS BLOB), CAST(machine_fingerprint AS BLOB), CAST(builder AS BLOB),
       CAST(started AS BLOB), CAST(hash AS BLOB)
FROM builds WHERE machine_name = @machine_name AND serial = @serial;

-- name: list-builds
SELECT CAST(id AS BLOB), CAST(serial AS BLOB), CAST(machine_name AS BLOB), CAST(machine_fingerprint AS BLOB), CAST(builder AS BLOB),
       CAST(started AS BLOB), CAST(hash AS BLOB)
FROM builds ORDER BY rowid;

-- name: add-build
INSERT INTO builds (id, serial, machine_name, machine_fingerprint, builder, started, hash)
VALUES (CAST(@id AS TEXT), CAST(@serial AS TEXT), CAST(@machine_name AS TEXT), CAST(@machine_fingerprint AS TEXT), CAST(@builder AS TEXT),
        CAST(@started AS TEXT), CAST(@hash AS TEXT));

-- name: read-entries
SELECT CAST(build_id AS BLOB), sequence, CAST(key AS BLOB), CAST(recorded AS BLOB), CAST(person AS BLOB), CAST(instrument AS BLOB),
       CAST(content AS BLOB), CAST(previous_hash AS BLOB), CAST(hash AS BLOB)
FROM entries WHERE build_id = @build AND sequence > @after ORDER BY sequence LIMIT @limit;

-- name: find-entry-by-key
SELECT CAST(build_id AS BLOB), sequence, CAST(key AS BLOB), CAST(recorded AS BLOB), CAST(person AS BLOB), CAST(instrument AS BLOB),
       CAST(content AS BLOB), CAST(previous_hash AS BLOB), CAST(hash AS BLOB)
FROM entries WHERE key = @key;

-- name: find-file-entry
SELECT CAST(build_id AS BLOB), sequence, CAST(key AS BLOB), CAST(recorded AS BLOB), CAST(person AS BLOB), CAST(instrument AS BLOB),
       CAST(content AS BLOB), CAST(previous_hash AS BLOB), CAST(hash AS BLOB)
FROM entries
WHERE build_id = @build AND content ->> 'kind' = @kind AND content ->> 'sha256' = @sha256
ORDER BY sequence LIMIT 1;

-- name: add-entry
INSERT INTO entries (build_id, sequence, key, recorded, person, instrument, content, previous_hash, hash)
VALUES (CAST(@build AS TEXT), @sequence, CAST(@key AS TEXT), CAST(@recorded AS TEXT), CAST(@person AS TEXT), CAST(@instrument AS TEXT),
        CAST(@content AS TEXT), CAST(@previous_hash AS TEXT), CAST(@hash AS TEXT));

-- name: find-end
SELECT entries, CAST(hash AS BLOB) FROM ends WHERE build_id = @build;

-- name: size
SELECT count(*), coalesce(sum(entries), 0) FROM ends;

-- name: list-ends
SELECT build_id, entries FROM ends;

-- name: find-file
SELECT bytes FROM photos WHERE sha256 = @sha256;

-- name: has-file
SELECT 1 FROM photos WHERE sha256 = @sha256;

-- name: add-file
INSERT INTO photos (sha256, bytes) VALUES (@sha256, @bytes);

-- name: read-seals
SELECT CAST(build_id AS BLOB), entries, hash, CAST(sealed AS BLOB), person, public_key, signature
FROM seals WHERE build_id = @build ORDER BY entries, rowid;

-- name: add-seal
INSERT INTO seals (build_id, entries, hash, sealed, person, public_key, signature)
SELECT @build, @entries, @hash, CAST(@sealed AS TEXT), @person, @public_key, @signature
WHERE NOT EXISTS (SELECT 1 FROM seals WHERE build_id = @build AND signature = @signature);
