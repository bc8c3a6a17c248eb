-- Format 2 of a journal in SQLite. The application id is 'PRVO' in ASCII.
PRAGMA application_id = 0x5052564F;
PRAGMA user_version = 2;

CREATE TABLE builds (
    id TEXT NOT NULL PRIMARY KEY,
    serial TEXT NOT NULL,
    machine_name TEXT NOT NULL,
    machine_fingerprint TEXT NOT NULL,
    builder TEXT NOT NULL,
    started TEXT NOT NULL,
    hash TEXT NOT NULL,
    UNIQUE (machine_name, serial)
) STRICT;

CREATE TABLE entries (
    build_id TEXT NOT NULL REFERENCES builds (id),
    sequence INTEGER NOT NULL,
    key TEXT NOT NULL UNIQUE,
    recorded TEXT NOT NULL,
    person TEXT NOT NULL,
    instrument TEXT NOT NULL,
    content TEXT NOT NULL,
    previous_hash TEXT NOT NULL,
    hash TEXT NOT NULL,
    PRIMARY KEY (build_id, sequence)
) STRICT, WITHOUT ROWID;

-- How far each record goes; kept by triggers alone.
CREATE TABLE ends (
    build_id TEXT NOT NULL PRIMARY KEY REFERENCES builds (id),
    entries INTEGER NOT NULL,
    hash TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Bytes of photographs, each once, under their SHA-256.
CREATE TABLE photos (
    sha256 TEXT NOT NULL PRIMARY KEY,
    bytes BLOB NOT NULL
) STRICT;

-- Signatures over how far a record went.
CREATE TABLE seals (
    build_id TEXT NOT NULL REFERENCES builds (id),
    entries INTEGER NOT NULL,
    hash TEXT NOT NULL,
    sealed TEXT NOT NULL,
    person TEXT NOT NULL,
    public_key TEXT NOT NULL,
    signature TEXT NOT NULL
) STRICT;
