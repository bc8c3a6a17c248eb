using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What a check of any kind shows, in words.</summary>
internal static class ShownWords
{
    private const string Ohm = "Ω";

    /// <summary>A reading in words.</summary>
    public static string Of(Check check, double value) =>
        Symptom.Is(check) ? Outcome(value)
        : check.Unit == Ohm ? ReadingWords.Of(value)
        : double.IsPositiveInfinity(value) ? "OL"
        : $"{Digits(value)} {check.Unit}";

    /// <summary>An interval in words.</summary>
    public static string Of(Check check, ReadingInterval shown)
    {
        if (check.Unit == Ohm && !Symptom.Is(check))
            return ReadingWords.Of(shown);
        if (shown == ReadingInterval.Anything || (Symptom.Is(check) && shown.Low < shown.High))
            return "anything";
        return Symptom.Is(check) || shown.Low.Equals(shown.High) ? Of(check, shown.Low) : $"{Digits(shown.Low)} to {Of(check, shown.High)}";
    }

    private static string Outcome(double value) => value switch
    {
        1 => "as it should be",
        0 => "not as it should be",
        _ => $"outcome {Digits(value)}",
    };

    private static string Digits(double value) => value.ToString("G3", CultureInfo.InvariantCulture);
}
