using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What a check shows in words, symptoms too.</summary>
internal static class ShownWords
{
    /// <summary>A reading in words.</summary>
    public static string Of(Check check, double value) => Symptom.Is(check) ? Outcome(value) : CheckWords.Shown(check, value);

    /// <summary>An interval in words.</summary>
    public static string Of(Check check, ReadingInterval shown) =>
        !Symptom.Is(check) ? CheckWords.Interval(check.Unit, shown)
        : shown.Low < shown.High ? "either"
        : Outcome(shown.Low);

    private static string Outcome(double value) => value switch
    {
        1 => "as it should be",
        0 => "not as it should be",
        _ => FormattableString.Invariant($"outcome {value}"),
    };
}
