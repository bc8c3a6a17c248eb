-- What the servers of one journal share beside the record: a schema of its own, which whoever may read the record cannot read, and a backup of the record can leave out.
-- Asked first: CREATE SCHEMA IF NOT EXISTS wants the right to make one also where there is one.
DO $$ BEGIN
    IF NOT EXISTS (SELECT FROM pg_namespace WHERE nspname = 'proveout_servers') THEN
        CREATE SCHEMA proveout_servers;
    END IF;
END $$;
REVOKE ALL ON SCHEMA proveout_servers FROM PUBLIC;
