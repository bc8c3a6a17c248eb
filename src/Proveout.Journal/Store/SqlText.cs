using System.Text.RegularExpressions;

namespace Proveout.Journal.Store;

/// <summary>The SQL of one database, kept in .sql files inside the assembly.</summary>
/// <param name="folder">Where they lie in the project.</param>
internal sealed partial class SqlText(string folder)
{
    private readonly Lazy<Dictionary<string, string>> _statements = new(() => NamedPart().Matches(Read(folder, "statements.sql"))
        .ToDictionary(part => part.Groups["name"].Value, part => part.Groups["text"].Value));

    /// <summary>The tables of a new journal.</summary>
    public string Tables => Read(folder, "tables.sql");

    /// <summary>The triggers that keep them as they are.</summary>
    public string Guards => Read(folder, "guards.sql");

    /// <summary>The schema of what servers share beside the journal.</summary>
    public string Servers => Read(folder, "servers.sql");

    /// <summary>In that schema, the keys of forms.</summary>
    public string Keys => Read(folder, "keys.sql");

    /// <summary>In that schema, who may come in and who tried.</summary>
    public string Access => Read(folder, "access.sql");

    /// <summary>What turns the format before into the one given.</summary>
    public string Upgrade(long format) => Read(folder, $"upgrade-{format}.sql");

    public string Statement(string name) => _statements.Value[name];

    private static string Read(string folder, string name)
    {
        using var stream = typeof(SqlText).Assembly.GetManifestResourceStream($"Proveout.Journal.{folder}.{name}")
            ?? throw new InvalidOperationException($"{folder}/{name} is not embedded.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"^-- name: (?<name>\S+)\r?\n(?<text>[^;]+;)", RegexOptions.Multiline)]
    private static partial Regex NamedPart();
}
