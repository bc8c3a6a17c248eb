-- Keys that forms are guarded with.
CREATE TABLE proveout_servers.form_keys (
    ordinal bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    name text COLLATE "C" NOT NULL UNIQUE,
    content text COLLATE "C" NOT NULL
);
REVOKE ALL ON proveout_servers.form_keys FROM PUBLIC;
CREATE TRIGGER form_keys_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON proveout_servers.form_keys EXECUTE FUNCTION proveout.refuse('a key of forms is never changed or removed');
