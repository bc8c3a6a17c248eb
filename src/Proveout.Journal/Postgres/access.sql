-- Who may come in and who is in, on one page of text that is replaced whole; and how often somebody tried of late, which nobody minds to lose.
CREATE TABLE proveout_servers.access (
    is_the_page boolean PRIMARY KEY DEFAULT true CHECK (is_the_page),
    mark uuid NOT NULL,
    content text COLLATE "C" NOT NULL
);
INSERT INTO proveout_servers.access (mark, content) VALUES (gen_random_uuid(), '');

CREATE UNLOGGED TABLE proveout_servers.tries (
    name text COLLATE "C" PRIMARY KEY,
    level double precision NOT NULL,
    changed_at timestamptz NOT NULL
);
CREATE INDEX tries_by_age ON proveout_servers.tries (changed_at);

REVOKE ALL ON proveout_servers.access, proveout_servers.tries FROM PUBLIC;
