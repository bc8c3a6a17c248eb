using System.Globalization;

namespace Proveout.Workshop;

/// <summary>What is predicted of the air in a bay, in words. Numbers that protect are rounded to the safe side.</summary>
public static class AirWords
{
    /// <summary>Heat, flow and temperature of a bay in a few sentences.</summary>
    public static IReadOnlyList<string> Summary(BayView bay)
    {
        ArgumentNullException.ThrowIfNull(bay);
        return
        [
            Text($"At rest {Math.Floor(bay.RestWatts.Least):0} W to {Math.Ceiling(bay.RestWatts.Most):0} W are given off in {bay.Name}, and up to {Math.Ceiling(bay.WorkWatts):0} W with everything at work."),
            bay.Ways.Count == 0
                ? "It has no openings: all heat leaves through its walls."
                : Text($"{Math.Floor(bay.Flow.NewLeast):0} to {Math.Ceiling(bay.Flow.NewMost):0} m³/h flow through it with new filters, and at least {Math.Floor(bay.Flow.LoadedLeast):0} m³/h until they are to be changed; the bay is then {Pressure(bay)}."),
            bay.Rise.RestMost is { } rest
                ? Text($"After an hour at rest its air is {Math.Max(0, Math.Floor(10 * bay.Rise.RestLeast) / 10):0.0} to {Math.Ceiling(10 * rest) / 10:0.0} K warmer than the room.")
                : "Nothing that is counted on carries the heat away at rest.",
            bay.Rise.WorkMost is { } work
                ? Text($"With everything at work in a room of {bay.RoomCelsius:0} °C it is at most {Math.Ceiling(bay.RoomCelsius + work):0} °C warm.")
                : "Nothing that is counted on carries the heat away with everything at work: give the bay openings, or say what its walls are.",
            bay.Rise.StillMost is { } still
                ? Text($"With every fan standing it may reach {Math.Ceiling(bay.RoomCelsius + still):0} °C.")
                : "With every fan standing nothing that is counted on carries the heat away.",
            .. ReviewTooCool(bay),
        ];
    }

    /// <summary>What flows through an opening.</summary>
    public static string Flow(BayWay way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return way switch
        {
            { LeastIn: >= 0 } => Text($"{Math.Floor(10 * way.LeastIn) / 10:0.0} to {Math.Ceiling(10 * way.MostIn) / 10:0.0} m³/h in"),
            { MostIn: <= 0 } => Text($"{Math.Floor(-10 * way.MostIn) / 10:0.0} to {Math.Ceiling(-10 * way.LeastIn) / 10:0.0} m³/h out"),
            _ => Text($"from {Math.Ceiling(-10 * way.LeastIn) / 10:0.0} m³/h out to {Math.Ceiling(10 * way.MostIn) / 10:0.0} m³/h in"),
        };
    }

    /// <summary>Watts, rounded outward.</summary>
    public static string Watts(double least, double most) => Text($"{Math.Floor(10 * least) / 10:0.0} to {Math.Ceiling(10 * most) / 10:0.0} W");

    /// <summary>Watts at most.</summary>
    public static string Most(double watts) => Text($"{Math.Ceiling(10 * watts) / 10:0.0} W");

    /// <summary>Name of what gives off heat.</summary>
    public static string NameOf(PartHeat heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        return heat.Part.Length > 0 ? heat.Part : "conductors";
    }

    /// <summary>A temperature at most; null where it has no limit.</summary>
    public static string Hottest(double? celsius) => celsius is { } hot ? Text($"{Math.Ceiling(hot):0} °C") : "no limit";

    /// <summary>What a part bears, rounded down, with where that comes from.</summary>
    public static string Bears(PartWarmth part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Text($"{Math.Floor(part.BearsUpTo):0} °C ({part.Basis})");
    }

    /// <summary>The verdict on a part in a sentence.</summary>
    public static string Verdict(PartWarmth part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var supply = part is { GivesPercent: { } gives, AskedPercent: { } asked }
            ? Text($" It surely gives {Math.Floor(gives):0} % of its current then, and at most {Math.Ceiling(asked):0} % are asked of it.")
            : "";
        return part.IsBorne
            ? Text($"Bears it, with {Math.Floor(part.BearsUpTo - part.HottestCelsius!.Value):0} K to spare.{supply}")
            : part.HottestCelsius is { } hottest
                ? Text($"May be {Math.Ceiling(hottest - part.BearsUpTo):0} K too warm: more air, less heat, or another place for it.{supply}")
                : "Nothing that is counted on keeps it cool.";
    }

    /// <summary>An electronic switch on its heat sink in a sentence.</summary>
    public static string Switch(SwitchWarmth warmth)
    {
        ArgumentNullException.ThrowIfNull(warmth);
        if (warmth is not { SinkCelsius: { } sink, BaseCelsius: { } plate, JunctionCelsius: { } junction })
            return $"{warmth.Part}: nothing that is counted on keeps its air cool.";
        var asked = warmth.MostKelvinsPerWatt is { } most ? Text($"a heat sink of up to {Math.Floor(10 * most) / 10:0.0} K/W would do") : "no heat sink would do";
        return Text($"{warmth.Part} on {warmth.Sink} makes up to {Math.Ceiling(10 * warmth.Watts) / 10:0.0} W: heat sink {Math.Ceiling(sink):0} °C, base {Math.Ceiling(plate):0} °C, junction {Math.Ceiling(junction):0} °C at most, of {Math.Floor(warmth.JunctionLimit):0} °C; {asked}.")
            + (sink >= 55 ? " Metal of 55 °C and more burns the skin: label it." : "")
            + (junction > warmth.JunctionLimit ? " It may be too warm." : "");
    }

    private static IEnumerable<string> ReviewTooCool(BayView bay)
    {
        if (bay.Rise.WorkMost is { } rise && Math.Ceiling(bay.RoomCelsius + rise) is var hottest && hottest > bay.ReviewCelsius)
            yield return Text($"The design review reckons with {bay.ReviewCelsius:0} °C in the bay: write `review: {{ambient: {hottest:0} degC}}`, and read it again.");
    }

    private static string Pressure(BayView bay) => bay.BayPascals switch
    {
        { Most: <= 0 } => Text($"{Math.Floor(-bay.BayPascals.Most):0} to {Math.Ceiling(-bay.BayPascals.Least):0} Pa below the room"),
        { Least: >= 0 } => Text($"{Math.Floor(bay.BayPascals.Least):0} to {Math.Ceiling(bay.BayPascals.Most):0} Pa above the room"),
        _ => Text($"within {Math.Ceiling(Math.Max(-bay.BayPascals.Least, bay.BayPascals.Most)):0} Pa of the room"),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
