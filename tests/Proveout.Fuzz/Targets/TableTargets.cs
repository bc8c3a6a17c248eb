using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Fuzz;

/// <summary>What reads tables that people, loggers and sensors write.</summary>
internal static class TableTargets
{
    public static IReadOnlyList<FuzzTarget> All { get; } =
    [
        new("table", Table),
        new("heat-log", HeatLog),
        new("shake", Shake),
        new("plate", Plate),
        new("frame", Frame),
        new("piece", Piece),
        new("readings-file", ReadingsOf),
    ];

    private static string Table(byte[] input)
    {
        var text = Told.Text(input);
        return $"{Told.Of(DelimitedText.Read(text, "table.csv"))} / {Told.Of(DelimitedText.ReadGrid(text, "grid.csv"))}";
    }

    private static string HeatLog(byte[] input)
    {
        var parts = Told.Parts(input);
        var typed = Told.Fields(parts.GetValueOrDefault("typed", ""));
        var before = parts.TryGetValue("before", out var earlier) ? LogSource.Of(new NamedText("before.csv", earlier)) : null;
        return Told.Of(HeatLogJudgement.Of(
            new(LogSource.Of(new NamedText("log.csv", parts[""])), before, "", typed.GetValueOrDefault("sensor", ""), typed.GetValueOrDefault("output", ""), typed), []));
    }

    private static string Shake(byte[] input)
    {
        var parts = Told.Parts(input);
        var typed = Told.Fields(parts.GetValueOrDefault("typed", ""));
        return Told.Of(ResonanceStudy.Of(new([File("shake.csv", parts[""])], parts.TryGetValue("after", out var after) ? [File("after.csv", after)] : [], typed, typed)));
    }

    private static string Plate(byte[] input)
    {
        var parts = Told.Parts(input);
        var typed = Told.Fields(parts.GetValueOrDefault("typed", ""));
        return Told.Of(LevelSheet.Of(new(
            Part(parts, ""), Part(parts, "later"), parts.GetValueOrDefault("supports", ""), Part(parts, "repeats"), typed.GetValueOrDefault("leave", ""), input.Length % 2 == 0, typed.ContainsKey("bend"), typed)));
    }

    private static string Frame(byte[] input)
    {
        var parts = Told.Parts(input);
        return Told.Of(FrameSheet.Of(new(Told.Fields(parts.GetValueOrDefault("typed", "")), Part(parts, "")) { Points = Part(parts, "points"), Distances = Part(parts, "distances") }));
    }

    private static string Piece(byte[] input)
    {
        var parts = Told.Parts(input);
        return Told.Of(PieceSheet.Of(new(Told.Fields(parts.GetValueOrDefault("typed", "")), Part(parts, ""))));
    }

    private static string ReadingsOf(byte[] input) => ReadingsFile.Read(Told.Text(input)) is { } readings
        ? string.Join(' ', readings.Select(reading => TypedTargets.Told(reading.Text)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        : "no readings";

    private static NamedText? Part(Dictionary<string, string> parts, string name) =>
        parts.TryGetValue(name, out var text) && text.Trim().Length > 0 ? new NamedText(name.Length > 0 ? name : "table.csv", text) : null;

    private static ShakeFile File(string name, string text) => new(name, () => new MemoryStream(System.Text.Encoding.UTF8.GetBytes(text)));
}
