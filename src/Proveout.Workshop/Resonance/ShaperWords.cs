using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Shapers in words.</summary>
internal static class ShaperWords
{
    /// <summary>The short name of the literature.</summary>
    public static string Name(ShaperKind kind) => kind switch
    {
        ShaperKind.ZeroVibration => "ZV",
        ShaperKind.ZeroVibrationDerivative => "ZVD",
        ShaperKind.ZeroVibrationSecondDerivative => "ZVDD",
        ShaperKind.ExtraInsensitive => "EI",
        ShaperKind.TwoHump => "two-hump EI",
        _ => "three-hump EI",
    };

    /// <summary>The name in words.</summary>
    public static string FullName(ShaperKind kind) => kind switch
    {
        ShaperKind.ZeroVibration => "zero vibration",
        ShaperKind.ZeroVibrationDerivative => "zero vibration and derivative",
        ShaperKind.ZeroVibrationSecondDerivative => "zero vibration and two derivatives",
        ShaperKind.ExtraInsensitive => "extra-insensitive",
        ShaperKind.TwoHump => "extra-insensitive, two humps",
        _ => "extra-insensitive, three humps",
    };

    /// <summary>Which shaper to use and why.</summary>
    public static string Advice(string axis, ShaperAdvice advice, ShaperDemand demand)
    {
        if (advice.Best is not { } best)
            return $"Axis {axis}: no resonance stands out, so there is nothing to shape. If parts ring all the same, excite the machine more and record again.";
        var shaper = best.Shaper;
        var made = Text($"{Name(shaper.Kind)} ({FullName(shaper.Kind)}) made for {shaper.Hertz:0.0} Hz and damping ratio {shaper.DampingRatio:0.000}");
        var does = Text($"it leaves at most {Up(100 * best.Residual):0.0} % of the vibration wherever frequency and damping lie inside their uncertainties and {100 * demand.Wander:0.#} % of wandering, and makes every move {1000 * shaper.DurationSeconds:0.0} ms longer");
        var corner = best.HighestAcceleration > 0
            ? Text($"Corners stay within {1000 * demand.CornerError:0.###} mm up to {Down(best.HighestAcceleration):0.##} m/s².")
            : Text($"The speed kept at corners alone rounds them by more than {1000 * demand.CornerError:0.###} mm: lower it.");
        return $"Axis {axis}: use {made}; {does}. {Reason(advice, best)} {corner}{Damping(advice)}";
    }

    /// <summary>A percentage rounded up to a tenth.</summary>
    public static double Up(double percent) => Math.Ceiling((percent * 10) - 1e-9) / 10;

    /// <summary>An acceleration rounded down to two digits after the point.</summary>
    public static double Down(double acceleration) => Math.Floor((acceleration * 100) + 1e-9) / 100;

    private static string Reason(ShaperAdvice advice, ShaperJudgement best)
    {
        if (!advice.MeetsTolerance)
            return "None keeps the tolerance; this one leaves least. Know the resonance better (a longer recording), or damp it or stiffen what gives way.";
        var gentler = advice.Judgements.Where(other => other.RoundingAtOne < best.RoundingAtOne).MaxBy(other => other.RoundingAtOne);
        return gentler is null
            ? "It is the one that rounds corners least, and it keeps the tolerance."
            : Text($"Of those that keep the tolerance it rounds corners least; {Name(gentler.Shaper.Kind)}, which rounds them less, would leave up to {Up(100 * gentler.Residual):0.0} %.");
    }

    private static string Damping(ShaperAdvice advice) => advice.IsDampingAssumed
        ? Text($" Its damping could not be told: everything between {ShaperAdvice.UsualDamping.Value - ShaperAdvice.UsualDamping.Expanded:0.00} and {ShaperAdvice.UsualDamping.Value + ShaperAdvice.UsualDamping.Expanded:0.00} was allowed for.")
        : "";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
