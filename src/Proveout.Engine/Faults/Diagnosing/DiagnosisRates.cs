namespace Proveout.Engine.Faults;

/// <summary>How often people and lists of mistakes are wrong; probabilities, 0 to 1.</summary>
/// <param name="Misread">That a reading is not what the instrument would show at the places named: misread, mistyped, a probe at a wrong place.</param>
/// <param name="FalseSymptom">That a symptom is reported wrongly.</param>
/// <param name="Unknown">That a build has a mistake which no rule generates.</param>
/// <remarks>
/// The defaults are orders of magnitude from memory. They keep one slip of the person at the bench from excluding the truth; they never take
/// part in deciding coverage.
/// </remarks>
public sealed record DiagnosisRates(double Misread = 0.005, double FalseSymptom = 0.02, double Unknown = 0.01)
{
    /// <summary>The rates that are assumed where nobody states others.</summary>
    public static DiagnosisRates Assumed { get; } = new();
}
