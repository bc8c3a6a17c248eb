-- From format 1 to format 2: seals are kept. Nothing that is recorded is touched.
PRAGMA user_version = 2;

CREATE TABLE seals (
    build_id TEXT NOT NULL REFERENCES builds (id),
    entries INTEGER NOT NULL,
    hash TEXT NOT NULL,
    sealed TEXT NOT NULL,
    person TEXT NOT NULL,
    public_key TEXT NOT NULL,
    signature TEXT NOT NULL
) STRICT;

CREATE TRIGGER seals_not_changed BEFORE UPDATE ON seals BEGIN SELECT RAISE(ABORT, 'a seal is never changed'); END;
CREATE TRIGGER seals_not_removed BEFORE DELETE ON seals BEGIN SELECT RAISE(ABORT, 'a seal is never removed'); END;
