using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What a hand-held meter shows between two places of the machine as designed, dead.</summary>
/// <param name="Red">Where the red lead is.</param>
/// <param name="Black">Where the black lead is.</param>
/// <param name="Ohms">What the resistance setting shows, in ohms.</param>
/// <param name="DiodeVolts">What the diode test shows, in volts; <see cref="ReadingInterval.Anything"/> when it cannot be told.</param>
/// <param name="Reason">Why, in words.</param>
public sealed record ExpectedReading(CheckPoint Red, CheckPoint Black, ReadingInterval Ohms, ReadingInterval DiodeVolts, string Reason)
{
    /// <summary>The resistance in words.</summary>
    public string OhmsInWords => ReadingWords.Of(Ohms);

    /// <summary>The diode test in words.</summary>
    public string DiodeInWords => DiodeWords.Of(DiodeVolts);
}
