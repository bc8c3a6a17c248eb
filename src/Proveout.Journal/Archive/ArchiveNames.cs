namespace Proveout.Journal.Archive;

/// <summary>The names that an archive may hold. None is ever made a path: what is read stays in memory until a journal takes it in.</summary>
internal static class ArchiveNames
{
    public const string Format = "proveout-build-archive 1";
    public const string Manifest = "manifest.json";
    public const string Entries = "entries.jsonl";
    public const string Seals = "seals.jsonl";
    private const string Files = "files/";

    public static string OfFile(string sha256) => Files + sha256;

    public static string? FileOf(string name) =>
        name.StartsWith(Files, StringComparison.Ordinal) && Fingerprint.IsOne(name[Files.Length..]) ? name[Files.Length..] : null;

    public static bool IsOne(string name) => name is Manifest or Entries or Seals || FileOf(name) is not null;

    /// <summary>A name from outside, cut and freed of what would disturb a line of text.</summary>
    public static string Shown(string name) =>
        string.Concat(name.Take(80).Select(letter => char.IsControl(letter) || char.IsSurrogate(letter) ? '?' : letter));
}
