-- Format 1 of a journal in PostgreSQL. All of it lies in a schema of its own, beside whatever else the database holds.
-- Texts are compared and sorted by their bytes (collation C): the order of a language changes with the operating system, and indexes with it.
CREATE SCHEMA proveout;

CREATE TABLE proveout.format (
    number integer NOT NULL PRIMARY KEY
);
INSERT INTO proveout.format (number) VALUES (1);

CREATE TABLE proveout.builds (
    ordinal bigint GENERATED ALWAYS AS IDENTITY,
    id text COLLATE "C" NOT NULL PRIMARY KEY,
    serial text COLLATE "C" NOT NULL,
    machine_name text COLLATE "C" NOT NULL,
    machine_fingerprint text COLLATE "C" NOT NULL,
    builder text COLLATE "C" NOT NULL,
    started text COLLATE "C" NOT NULL,
    hash text COLLATE "C" NOT NULL,
    UNIQUE (machine_name, serial)
);

CREATE TABLE proveout.entries (
    build_id text COLLATE "C" NOT NULL REFERENCES proveout.builds (id),
    sequence bigint NOT NULL,
    key text COLLATE "C" NOT NULL UNIQUE,
    recorded text COLLATE "C" NOT NULL,
    person text COLLATE "C" NOT NULL,
    instrument text COLLATE "C" NOT NULL,
    content text COLLATE "C" NOT NULL,
    previous_hash text COLLATE "C" NOT NULL,
    hash text COLLATE "C" NOT NULL,
    PRIMARY KEY (build_id, sequence)
);

-- How far each record goes; kept by triggers alone.
CREATE TABLE proveout.ends (
    build_id text COLLATE "C" NOT NULL PRIMARY KEY REFERENCES proveout.builds (id),
    entries bigint NOT NULL,
    hash text COLLATE "C" NOT NULL
);

-- Bytes of photographs and data files, each once, under their SHA-256.
CREATE TABLE proveout.photos (
    sha256 text COLLATE "C" NOT NULL PRIMARY KEY,
    bytes bytea NOT NULL
);

-- Signatures over how far a record went.
CREATE TABLE proveout.seals (
    ordinal bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    build_id text COLLATE "C" NOT NULL REFERENCES proveout.builds (id),
    entries bigint NOT NULL,
    hash text COLLATE "C" NOT NULL,
    sealed text COLLATE "C" NOT NULL,
    person text COLLATE "C" NOT NULL,
    public_key text COLLATE "C" NOT NULL,
    signature text COLLATE "C" NOT NULL,
    UNIQUE (build_id, signature)
);
