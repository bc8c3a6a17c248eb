using System.Globalization;

namespace Proveout.Workshop;

/// <summary>What is predicted of heat, in words. Numbers that protect are rounded to the safe side.</summary>
public static class HeatWords
{
    private const double LongestInSeconds = 120;

    /// <summary>A heated body in one or two sentences.</summary>
    public static string Summary(HeatedView body)
    {
        ArgumentNullException.ThrowIfNull(body);
        var density = body.WattsPerSquareCentimetre is { } watts ? Text($", {watts:0.00} W/cm²") : "";
        return Text($"{body.Name}{(body.Heater.Length > 0 ? $" ({body.Heater})" : "")}{density}: at full output it shows {body.TargetCelsius:0} °C after {Times(body.Seconds.Least, body.Seconds.Most)}; ")
            + (body.HoldPercent.Most >= 100
                ? "with the most loss and the least power it does not hold that."
                : Text($"{body.HoldPercent.Least:0} % to {body.HoldPercent.Most:0} % of its output hold that."));
    }

    /// <summary>What to set a guard to, and how good it is, in sentences.</summary>
    public static IReadOnlyList<string> Guard(GuardView guard)
    {
        ArgumentNullException.ThrowIfNull(guard);
        return
        [
            Text($"Guard while it warms up: stop when what is shown rises by less than {guard.LeastRiseKelvin:0.0} K in {guard.WindowSeconds:0} s. Of sound heaters it stops at most {guard.FalseAlarmPercent:0.0} %; of those whose sensor has fallen out it misses at most {Math.Ceiling(10 * guard.MissedPercent) / 10:0.0} %. The hottest that one of these became was {Math.Ceiling(guard.HottestCelsius):0} °C."),
            Text($"Guard while it holds: stop when what is shown strays by {guard.StrayKelvin:0} K for {guard.StraySeconds:0} s. ")
                + (guard.HottestHeldCelsius is { } hottest
                    ? Text($"If the sensor falls out then, it gets at most {Math.Ceiling(hottest):0} °C hot.")
                    : "A sensor that falls only partly out does not show that way."),
            "A guard is a program. An independent thermal cut-off is what stops a heater whose switch has failed.",
        ];
    }

    /// <summary>Settings of a controller, and what they will do, in sentences.</summary>
    public static IReadOnlyList<string> Controller(ControllerView controller)
    {
        ArgumentNullException.ThrowIfNull(controller);
        return
        [
            Text($"Standard form, output from 0 to 1: gain {Digits(controller.Gain)} for each K, integral time {controller.IntegralSeconds:0.#} s, derivative time {controller.DerivativeSeconds:0.##} s (SIMC)."),
            .. controller.Parallel.Select(form => Text($"Parallel form, output from 0 to {form.FullOutput:0}: proportional {Digits(form.Proportional)}, integral {Digits(form.Integral)} a second, derivative {Digits(form.Derivative)} s.")),
            Text($"Within all tolerances Ms is at most {Math.Ceiling(100 * controller.WorstSensitivity) / 100:0.00} (2 and more is nervous), and it goes at most {Math.Ceiling(controller.WorstOvershootKelvin):0} K beyond its target")
                + (controller.SettledSeconds is { } settled ? Text($"; in the middle of them it stays within 1 K after {Time(settled)}.") : "."),
            "These are settings to start with. Those fitted to a log of your own heater are better.",
        ];
    }

    /// <summary>A temperature.</summary>
    public static string Celsius(double celsius) => Text($"{celsius:0} °C");

    /// <summary>Resistance of a sensor at the plug, with four digits, for its limits may lie close; rounded inward.</summary>
    public static string Ohms(SensorPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        var (scale, unit) = point.LowOhms >= 10_000 ? (1e3, "kΩ") : (1, "Ω");
        var digits = Math.Pow(10, 3 - Math.Floor(Math.Log10(point.LowOhms / scale)));
        return Text($"{Math.Ceiling(point.LowOhms / scale * digits) / digits:0.###} to {Math.Floor(point.HighOhms / scale * digits) / digits:0.###} {unit}");
    }

    /// <summary>Error of what is shown, rounded outward.</summary>
    public static string Error(SensorPoint point)
    {
        ArgumentNullException.ThrowIfNull(point);
        return Text($"{Math.Floor(10 * point.LeastErrorKelvin) / 10:0.0} K to +{Math.Ceiling(10 * point.MostErrorKelvin) / 10:0.0} K");
    }

    /// <summary>A time in seconds or minutes.</summary>
    public static string Time(double seconds) => seconds < LongestInSeconds ? Text($"{seconds:0} s") : Text($"{seconds / 60:0.#} min");

    /// <summary>Two times, both in the unit of the longer.</summary>
    public static string Times(double leastSeconds, double mostSeconds) =>
        mostSeconds < LongestInSeconds ? Text($"{leastSeconds:0} s to {mostSeconds:0} s") : Text($"{leastSeconds / 60:0.#} to {mostSeconds / 60:0.#} min");

    // Three digits that count.
    private static string Digits(double value) => value.ToString(value >= 100 ? "0" : "G3", CultureInfo.InvariantCulture);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
