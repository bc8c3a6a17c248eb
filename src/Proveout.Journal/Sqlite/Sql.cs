using System.Text.RegularExpressions;

namespace Proveout.Journal.Sqlite;

/// <summary>The SQL of the journal, kept in .sql files inside the assembly.</summary>
internal static partial class Sql
{
    private static readonly Dictionary<string, string> Statements = NamedPart().Matches(Resource("statements.sql"))
        .ToDictionary(part => part.Groups["name"].Value, part => part.Groups["text"].Value);

    /// <summary>The tables of a new journal.</summary>
    public static string Tables { get; } = Resource("tables.sql");

    /// <summary>The triggers that keep them as they are.</summary>
    public static string Guards { get; } = Resource("guards.sql");

    /// <summary>What turns the format before into the one given.</summary>
    public static string Upgrade(long format) => Resource($"upgrade-{format}.sql");

    public static string Statement(string name) => Statements[name];

    private static string Resource(string name)
    {
        using var stream = typeof(Sql).Assembly.GetManifestResourceStream($"Proveout.Journal.Sqlite.{name}")
            ?? throw new InvalidOperationException($"{name} is not embedded.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [GeneratedRegex(@"^-- name: (?<name>\S+)\r?\n(?<text>[^;]+;)", RegexOptions.Multiline)]
    private static partial Regex NamedPart();
}
