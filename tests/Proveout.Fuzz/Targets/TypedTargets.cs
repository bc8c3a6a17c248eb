using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Fuzz;

/// <summary>What reads what people type and say.</summary>
internal static class TypedTargets
{
    private static readonly string[] Units = ["Ω", "V", "A", "s", "", "°C", "Hz", "mm"];

    public static IReadOnlyList<FuzzTarget> All { get; } =
    [
        new("typed", input => Told(Fuzz.Told.Text(input))) { MostBytes = 4096 },
        new("figures", Figures) { MostBytes = 16 * 1024 },
    ];

    /// <summary>What each unit makes of a text.</summary>
    /// <exception cref="InvalidOperationException">A reading was made of it that no meter shows.</exception>
    public static string Told(string text)
    {
        var told = "";
        foreach (var unit in Units)
        {
            var spoken = SpokenReading.TryRead(text, unit);
            if (spoken is not null && ReadingText.TryRead(spoken, unit) is null)
                throw new InvalidOperationException($"`{spoken}` was understood in {unit} and cannot be read.");
            var value = ReadingText.TryRead(text, unit);
            if (value is { } number && (double.IsNaN(number) || double.IsNegativeInfinity(number) || (unit == "Ω" && number < 0)))
                throw new InvalidOperationException($"A reading of {number} {unit} was made of it.");
            told += value switch { null => "-", double.PositiveInfinity => "o", 0 => "0", < 0 => "m", _ => "+" } + (spoken is null ? "" : "s");
        }

        return told + (QuantityText.TryParseBand(text, out _) ? "b" : "") + (QuantityText.TryParseArea(text, out _) ? "a" : "") + (QuantityText.TryParseLength(text, out _) ? "l" : "");
    }

    private static string Figures(byte[] input)
    {
        var typed = Fuzz.Told.Fields(Fuzz.Told.Text(input));
        return string.Join(
            " / ",
            Fuzz.Told.Of(BudgetSheet.Of(typed)),
            Fuzz.Told.Of(MotorSheet.Of(typed)),
            Fuzz.Told.Of(FrameSheet.Of(new(typed, null))),
            Fuzz.Told.Of(PieceSheet.Of(new(typed, null))),
            Fuzz.Told.Of(Sounding.Of(new([], typed))),
            Fuzz.Told.Of(LevelSheet.Of(new(null, null, typed.GetValueOrDefault("supports", ""), null, "", true, false, typed))));
    }
}
