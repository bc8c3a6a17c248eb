using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>A motor sheet in words, row by row, with the digits that the figures are worth.</summary>
public static class MotorWords
{
    /// <summary>What, and the figure with its unit.</summary>
    public static IReadOnlyList<(string What, string Figure)> Rows(MotorView sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return
        [
            // What a controller is told is exact and is not rounded to three digits.
            ("Steps for each millimetre", sheet.Steps.StepsByMillimetre.ToString("0.####", CultureInfo.InvariantCulture)),
            ("Travel for each turn of the motor", Figure(sheet.Steps.MillimetresByTurn, "mm")),
            ("Travel for each full step", Figure(sheet.Steps.MillimetresByFullStep, "mm")),
            .. sheet.Current is { } current ? CurrentRows(current) : [],
            .. sheet.Curve is { HoldsCurrent: true } curve ? CurveRows(curve) : [],
            .. sheet.Load is { } load ? LoadRows(load) : [],
            .. sheet.Resonance is { } resonance ? ResonanceRows(resonance) : [],
        ];
    }

    private static IEnumerable<(string What, string Figure)> CurrentRows(CurrentView current) =>
        [("Current to set", current.Words), ("Heat in both windings", Figure(current.CopperWatts, "W"))];

    private static IEnumerable<(string What, string Figure)> CurveRows(CurveView curve) =>
    [
        ("Torque up to the corner", Figure(curve.RestNewtonMetres, "N·m")),
        ("Corner: torque falls above", $"{Figure(curve.CornerMillimetresPerSecond, "mm/s")} ({Figure(curve.CornerTurnsPerSecond, "turns/s")})"),
        ("Nothing is left at", Figure(curve.HighestMillimetresPerSecond, "mm/s")),
        .. curve.RiseMicroseconds is { } rise ? [("Current rises to its peak in", Figure(rise, "µs"))] : Array.Empty<(string, string)>(),
    ];

    private static IEnumerable<(string What, string Figure)> LoadRows(LoadView load) =>
    [
        ("Torque needed", Figure(load.NeededNewtonMetres, "N·m")),
        ("Torque there at the highest speed", Figure(load.AvailableNewtonMetres, "N·m")),
        ("Margin against lost steps", $"{SensibleDigits.Of(load.Ratio, 2)} times; twice is usual"),
        ("The axis lags behind by", load.LagMillimetres is { } lag ? Figure(lag, "mm") : "it does not keep up"),
        ("Acceleration with twice the torque in hand, at the highest speed", Figure(load.MostAcceleration, "m/s²")),
        ("Speed with twice the torque in hand, at this acceleration", load.HighestSpeed > 0 ? Figure(load.HighestSpeed, "mm/s") : "none: not even from rest"),
    ];

    private static IEnumerable<(string What, string Figure)> ResonanceRows(ResonanceView resonance) =>
    [
        ("First resonance of the mass on the belt", $"{SensibleDigits.Of(resonance.LowestHertz)} to {Figure(resonance.HighestHertz, "Hz")}"),
        ("Least stiffness at the carriage", Figure(resonance.SoftestNewtonsPerMillimetre, "N/mm")),
        .. resonance.GiveMillimetres is { } give ? [("Give under the acceleration there", Figure(give, "mm"))] : Array.Empty<(string, string)>(),
    ];

    private static string Figure(double value, string unit) => $"{SensibleDigits.Of(value)} {unit}";
}
