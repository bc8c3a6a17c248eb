namespace Proveout.Engine.Heat;

/// <summary>A kind of resistive temperature sensor with the spread of its makers.</summary>
/// <param name="Id">Identifier, lower case with hyphens.</param>
/// <param name="Name">What it is, in a few words.</param>
/// <param name="Curve">Its nominal curve.</param>
/// <param name="Corners">Curves between which every sound sensor of this kind lies at each temperature.</param>
public sealed record SensorType(string Id, string Name, IResistanceCurve Curve, IReadOnlyList<IResistanceCurve> Corners)
{
    /// <summary>Lowest and highest resistance in ohms of a sound sensor at a temperature.</summary>
    public (double Low, double High) OhmsAt(double celsius)
    {
        var (low, high) = (double.PositiveInfinity, 0.0);
        foreach (var corner in Corners)
        {
            var ohms = corner.OhmsAt(celsius);
            (low, high) = (Math.Min(low, ohms), Math.Max(high, ohms));
        }

        return (low, high);
    }

    /// <summary>A thermistor whose resistance at 25 °C and beta are each right within a share: at any temperature the limits lie at the corners, for R rises or falls with each.</summary>
    internal static SensorType Ntc(string id, double ohmsAt25, double beta, double share = 0.01)
    {
        var name = ohmsAt25 >= 1000 ? $"thermistor {ohmsAt25 / 1000:0.#} kΩ at 25 °C, beta {beta:0} K" : $"thermistor {ohmsAt25:0} Ω at 25 °C, beta {beta:0} K";
        double[] ends = [1 - share, 1 + share];
        return new(id, name, new NtcBeta(ohmsAt25, beta), [.. ends.SelectMany(ohms => ends.Select(curved => new NtcBeta(ohmsAt25 * ohms, beta * curved)))]);
    }

    /// <summary>Platinum of IEC 60751 class B: the tolerance in K becomes one in ohms at 0 °C and one in slope, both taken to their ends.</summary>
    internal static SensorType Platinum(string id, double ohmsAt0) => new(
        id,
        $"platinum sensor {ohmsAt0:0} Ω at 0 °C",
        new PlatinumResistance(ohmsAt0),
        [new ShiftedCurve(new PlatinumResistance(ohmsAt0), PlatinumResistance.ClassB, -1), new ShiftedCurve(new PlatinumResistance(ohmsAt0), PlatinumResistance.ClassB, 1)]);
}
