using Npgsql;

namespace Proveout.Journal.Postgres;

/// <summary>Keys of forms in a schema of their own beside the journal, which only the owner of the tables reads.</summary>
/// <param name="database">The database.</param>
internal sealed class PostgresKeys(PostgresDatabase database) : ISharedKeys
{
    private const string Table = "form_keys";

    public IReadOnlyList<string> Read()
    {
        Make();
        return database.Ask(IReadOnlyList<string> (NpgsqlConnection connection) =>
        {
            using var command = new NpgsqlCommand("SELECT content FROM proveout_servers.form_keys ORDER BY ordinal", connection);
            using var reader = command.ExecuteReader();
            var texts = new List<string>();
            while (reader.Read())
                texts.Add(reader.GetString(0));
            return texts;
        });
    }

    public void Add(string name, string text) => database.Write((NpgsqlConnection connection) =>
    {
        using var command = new NpgsqlCommand("INSERT INTO proveout_servers.form_keys (name, content) VALUES ($1, $2)", connection) { Parameters = { new() { Value = name }, new() { Value = text } } };
        return command.ExecuteNonQuery();
    });

    public void Alone(Action work)
    {
        Make();
        // The work has connections of its own.
        database.Write((NpgsqlConnection connection) =>
        {
            ServersSchema.Hold(connection);
            work();
            return true;
        });
    }

    private void Make() => ServersSchema.Make(database, Table, sql => sql.Keys);
}
