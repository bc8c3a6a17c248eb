using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Gravity as a check of the unit: a sensor that ends where it began feels 1 g on average.</summary>
/// <param name="unit">The unit as the file names it.</param>
/// <param name="means">Mean of each direction, in m/s² by that unit.</param>
internal sealed class GravityCheck(string unit, IReadOnlyList<double> means)
{
    // Offset and scale of cheap sensors, and a mean that is not quite one of rest (from memory).
    private const double Near = 0.15;

    // Below this the logger took gravity off.
    private const double Removed = 0.2;

    private double Share => Math.Sqrt(means.Sum(mean => mean * mean)) / SignalUnits.Gravity;

    /// <summary>Why the unit cannot be right; null when it can.</summary>
    public Diagnostic? Refusal(string name)
    {
        foreach (var other in new[] { "m/s²", "g", "mg" })
        {
            // What gravity would read if the numbers were in the other unit after all.
            var taken = Share * SignalUnits.Acceleration(other)!.Value / SignalUnits.Acceleration(unit)!.Value;
            var isOther = Math.Abs(taken - 1) <= Near && Math.Abs(Share - 1) > Near && (means.Count == 3 || Share > 1 + Near);
            if (isOther)
                return new("unit-against-gravity", new SourcePlace(name, 1, 1), Text($"By its heading, in {unit}, the sensor feels {Share:0.###} g on average; at rest it is 1 g, which the same numbers are in {other}."), $"Correct the unit in the heading to {other}, or the range that the recorder was told.");
        }

        return Share > 1.5
            ? new("unit-against-gravity", new SourcePlace(name, 1, 1), Text($"By its heading, in {unit}, the sensor feels {Share:0.###} g on average; at rest it is 1 g."), "Correct the unit in the heading, or the range that the recorder was told.")
            : null;
    }

    /// <summary>What to mind.</summary>
    public IEnumerable<string> Notes()
    {
        if (means.Count < 3 || Math.Abs(Share - 1) <= Near)
            yield break;
        yield return Share < Removed
            ? "The mean of the accelerations is near nothing: the recorder took gravity off, so that the unit could not be checked against 1 g. Frequencies, damping and shapers do not depend on it."
            : Text($"The sensor feels {Share:0.##} g on average where 1 g is due: see its range setting and its fixing. Frequencies, damping and shapers do not depend on it.");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
