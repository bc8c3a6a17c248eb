using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>What every mistake with the air of a bay shows to paper, hand, thermometer and meter, in the form that plan and diagnosis work on.</summary>
public static class AirCampaign
{
    /// <summary>Kind of the checks that ask for an air-speed meter, which few builders have.</summary>
    public const string AirSpeed = "air-speed";

    private const string Mains = "The bay is closed and stays closed: mains may be inside, and nothing but paper or an insulated probe goes into an opening, no deeper than its grille.";
    private const string Blades = "Blades cut: no finger, sleeve or cable near a fan that turns or may start.";

    private static readonly SetUp FansOn = new("fans-on", "Fans on, bay closed, heaters off", ["Close the bay as it is closed in use.", "Switch on with heaters off, and let every fan run at full output."], [Blades, Mains], 60) { Phase = Phase.InUse };

    private static readonly SetUp FanMeter = new(
        "fan-meter",
        "Meter in the fan's lead",
        ["Switch off, open the bay, and put a meter for direct current between the fan's plug and its output.", "Lead its leads out, close the bay, switch on, and let the fan run at full output."],
        ["Isolate, lock off and prove dead before you open the bay or pull a plug.", Blades],
        240)
    {
        Phase = Phase.Live,
    };

    private static readonly SetUp Soaked = new(
        "soaked",
        "Closed, an hour at rest with heaters at their targets",
        ["Close the bay as it is closed in use.", "Let heaters hold their targets and motors hold for an hour."],
        ["Stay in the room, and switch off when anything smells or smokes.", Mains],
        3600)
    {
        Phase = Phase.InUse,
    };

    /// <summary>Simulates every mistake at every check, for every value that sound parts may have.</summary>
    /// <param name="bay">The bay as designed.</param>
    public static FaultDictionary Of(BayAir bay)
    {
        ArgumentNullException.ThrowIfNull(bay);
        var sound = new BayClimate(bay);
        var readings = new AirReadings(sound);
        (Check Check, Func<BayClimate, ReadingInterval> Shows)[] made = [.. Checks(sound, readings)];
        AirMistake[] mistakes = [.. AirMistakes.Of(bay)];
        BayClimate[] left = [.. mistakes.Select(mistake => new BayClimate(mistake.Left))];
        return new FaultDictionary(
            [FansOn, FanMeter, Soaked],
            [.. made.Select(check => check.Check)],
            [.. mistakes.Zip(left).Select(pair => FaultOf(pair.First, pair.Second, sound))],
            [.. left.Select(climate => ResponseOf(climate, made))]);
    }

    private static IEnumerable<(Check Check, Func<BayClimate, ReadingInterval> Shows)> Checks(BayClimate sound, AirReadings readings)
    {
        foreach (var (index, opening) in sound.Bay.Openings.Index())
        {
            if (readings.Leaves(index) is { } leaves)
                yield return Make(
                    $"paper:{opening.Name}", "air-way", FansOn, $"Paper at {opening.Name}", $"Hold a strip of thin paper before {opening.Name}: it should be {(leaves ? "blown away from" : "drawn to")} the opening. Hanging still, or the other way, is not as it should be.",
                    "", "The way of the air by fans and openings of the design.", 20, left => readings.Paper(left, index));
            if (readings.Leaves(index) is not null)
                yield return Make(
                    $"air-speed:{opening.Name}", AirSpeed, FansOn, $"Air speed at {opening.Name}", $"With an air-speed meter, move it slowly over all of {opening.Name}, and take the mean.",
                    "m/s", "The flow through the opening over its free area.", 120, left => readings.Speed(left, index));
            yield return Make(
                $"hand:{opening.Name}", "air-stream", FansOn, $"Hand before {opening.Name}", $"Hold a dry hand a few centimetres before {opening.Name}: it should feel air move, in or out.",
                "", "The speed of the air in its free area.", 15, left => readings.Hand(left, index));
            if (opening.Fan is { Amperes: not null } fan)
                yield return Make(
                    $"fan-current:{opening.Name}", "fan-current", FanMeter, $"Current of {NameOf(fan, opening)}", "Let it run for ten seconds, then read the current.",
                    "mA", "The current of its type: data sheets give the most.", 60, left => AirReadings.Current(left.Bay.Openings[index].Fan!));
            if (opening.Fan is { TurnsAMinute: not null } signal)
                yield return Make(
                    $"fan-speed:{opening.Name}", "fan-speed", FansOn, $"Speed of {NameOf(signal, opening)}", "Read the speed that its signal shows, at full output.",
                    "r/min", "The speed of its data sheet with its tolerance.", 20, left => AirReadings.Turns(left.Bay.Openings[index].Fan!));
        }

        var where = readings.Outlet is { } outlet ? $"just inside {sound.Bay.Openings[outlet].Name}" : "in the middle of the bay";
        yield return Make(
            "soak-rise", "air-rise", Soaked, "Rise of the air after an hour", $"Read one thermometer {where}, and one in the room that no warm air reaches; take the first less the second.",
            "K", "Heat of all parts at rest over what the air and the walls carry away.", 120, readings.Soaked);

        (Check, Func<BayClimate, ReadingInterval>) Make(
            string id, string kind, SetUp setUp, string title, string instruction, string unit, string why, double cost, Func<BayClimate, ReadingInterval> shows) =>
            (new Check(id, kind, setUp.Id, title, instruction, [], unit, shows(sound), why, cost), shows);
    }

    private static string NameOf(OpeningFan fan, AirOpening opening) => fan.Part.Length > 0 ? $"{fan.Part} in {opening.Name}" : $"the fan in {opening.Name}";

    private static FaultResponse ResponseOf(BayClimate left, (Check Check, Func<BayClimate, ReadingInterval> Shows)[] checks)
    {
        var changed = checks.Index()
            .Select(check => (check.Index, Interval: check.Item.Shows(left)))
            .Where(shown => shown.Interval != checks[shown.Index].Check.Expectation)
            .ToArray();
        return new FaultResponse([.. changed.Select(shown => shown.Index)], [.. changed.Select(shown => shown.Interval)]);
    }

    private static Fault FaultOf(AirMistake mistake, BayClimate left, BayClimate sound)
    {
        var (severity, consequence) = ConsequenceOf(left, sound);
        if (mistake.BurnsFan)
            (severity, consequence) = (Severity.Damage, $"It takes far more current than it is made for, burns out, and then stands. {consequence}");
        if (mistake.BaresMains)
            (severity, consequence) = (Severity.Shock, $"Mains can be touched. {consequence}");
        return new Fault(mistake.Id, mistake.Kind, mistake.Sentence, [.. mistake.Subjects], severity, consequence, mistake.Prior, mistake.OtherEvidence);
    }

    // By the part that suffers worst: one without a derating may be destroyed, a supply only gives less; where all bear it, nothing shows.
    private static (Severity Severity, string Sentence) ConsequenceOf(BayClimate left, BayClimate sound)
    {
        var air = double.IsFinite(left.HottestCelsius) ? Text($"The air in the bay may reach {Math.Ceiling(left.HottestCelsius):0} °C with everything at work") : "Nothing that is counted on carries the heat away";
        var suffers = left.Bay.Parts.Where(part => !part.Bears(left.HottestAt(part))).OrderBy(part => part.Derating is null ? 0 : 1).ThenBy(part => part.BearsUpTo - part.AboveAirKelvin).FirstOrDefault();
        if (suffers is null)
            return left.HottestCelsius > sound.HottestCelsius + 2
                ? (Severity.Hidden, $"{air}; every part whose limit is known bears that, and ages faster.")
                : (Severity.Hidden, $"{air}, no more than without this mistake.");
        var wasSo = sound.Bay.Parts.First(part => part.Designation == suffers.Designation) is var before && !before.Bears(sound.HottestAt(before));
        if (!double.IsFinite(left.HottestCelsius))
            return (suffers.Derating is null ? Severity.Damage : Severity.DoesNotWork, $"{air}; {suffers.Designation} suffers first.");
        return suffers.Derating is null
            ? (Severity.Damage, Text($"{air}, {Math.Ceiling(left.HottestAt(suffers)):0} °C at {suffers.Designation}, which bears {Math.Floor(suffers.LimitCelsius):0} °C around it{(wasSo ? ", which it may pass without this mistake too" : "")}."))
            : (Severity.DoesNotWork, Text($"{air}; {suffers.Designation} then surely gives only {Math.Floor(100 * suffers.ShareAt(left.HottestAt(suffers))):0} % of its current, and {Math.Ceiling(100 * suffers.Derating.AskedShare):0} % are asked of it."));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
