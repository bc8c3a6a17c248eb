using System.Text.RegularExpressions;

namespace Proveout.Workshop;

/// <summary>Words and turns of speech of the trade for troubles and things (common practice).</summary>
internal static partial class TroubleWords
{
    // In this order: what says more comes before what says less. Apostrophes are gone and blanks single when these are looked for.
    private static readonly (Trouble Trouble, Regex Said)[] Troubles =
    [
        (Trouble.Leaks, LeaksSaid()),
        (Trouble.Tingles, TinglesSaid()),
        (Trouble.Restarts, RestartsSaid()),
        (Trouble.NoStop, NoStopSaid()),
        (Trouble.Trips, TripsSaid()),
        (Trouble.Backwards, BackwardsSaid()),
        (Trouble.Hums, HumsSaid()),
        (Trouble.AlwaysOn, AlwaysOnSaid()),
        (Trouble.Dead, DeadSaid()),
    ];

    // Each row is one thing; its first word stands for all.
    private static readonly string[][] Things =
    [
        ["fan", "fans", "blower", "blowers", "ventilator", "cooling", "cooler"],
        ["motor", "motors", "stepper", "steppers", "axis", "axes", "gantry", "carriage"],
        ["heater", "heaters", "heating", "heat", "heats", "heated", "hot", "warm", "cold", "cartridge", "element"],
        ["plate", "bed", "hotbed", "platform", "buildplate"],
        ["nozzle", "hotend", "head", "toolhead", "tip"],
        ["light", "lights", "lamp", "lamps", "led", "leds", "strip", "indicator"],
        ["display", "screen", "monitor", "panel", "touchscreen"],
        ["computer", "host"],
        ["board", "boards", "controller", "mainboard", "motherboard", "electronics"],
        ["relay", "relays", "contactor", "contactors", "ssr"],
        ["valve", "valves", "solenoid", "dispenser"],
        ["fuse", "fuses", "breaker", "breakers", "mcb"],
        ["chamber", "enclosure"],
        ["bay", "cabinet"],
        ["frame", "chassis", "housing", "metal", "case"],
    ];

    private static readonly Dictionary<string, string> StandsFor = Things.SelectMany(row => row.Select(word => (word, row[0]))).ToDictionary(StringComparer.Ordinal);

    /// <summary>The trouble that a sentence speaks of; null when it cannot be told.</summary>
    public static Trouble? TroubleOf(string sentence)
    {
        var plain = Plain(sentence);
        return Troubles.Where(trouble => trouble.Said.IsMatch(plain)).Select(trouble => (Trouble?)trouble.Trouble).FirstOrDefault();
    }

    /// <summary>The words of a sentence, lower case, each synonym by the word that stands for all.</summary>
    public static HashSet<string> WordsOf(string sentence) =>
        [.. Word().Matches(Plain(sentence)).Select(match => StandsFor.GetValueOrDefault(match.Value, match.Value))];

    /// <summary>True for a word that stands for a kind of thing and not for one of them.</summary>
    public static bool IsThing(string word) => StandsFor.ContainsKey(word);

    private static string Plain(string sentence) => Blank().Replace(
        sentence.ToLowerInvariant().Replace("'", "", StringComparison.Ordinal).Replace("’", "", StringComparison.Ordinal)
            .Replace("hot end", "hotend", StringComparison.Ordinal).Replace("tool head", "toolhead", StringComparison.Ordinal)
            .Replace("e-stop", "emergency stop", StringComparison.Ordinal).Replace("estop", "emergency stop", StringComparison.Ordinal),
        " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex(@"[\p{L}\p{Nd}]+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\brc[db]o?s?\b|\bgfci\b|\brcbo\b|residual|earth leakage|ground fault")]
    private static partial Regex LeaksSaid();

    [GeneratedRegex(@"tingl|tickl|prickl|\bshocks?\b|\bshocked\b|\bzap|\bbuzz(es|ed)? (me|my)")]
    private static partial Regex TinglesSaid();

    [GeneratedRegex(@"(starts?|comes? (back )?on|runs?|moves?|restarts?).* (again )?(by itself|on its own|by themselves|when i (pull|twist|release))|restarts? (after|when|as soon)")]
    private static partial Regex RestartsSaid();

    [GeneratedRegex(@"(emergency stop|stop button|mushroom|red button).*(does(nt| not)|do(nt| not)|not|nothing|keeps?|no effect|ignor|still)|(keeps?|still|carr(y|ies) on).*(emergency stop|stop button|mushroom|red button)")]
    private static partial Regex NoStopSaid();

    [GeneratedRegex(@"\btrips?\b|\btripp|\bblow(s|n|ing)?\b.*(fuse|breaker)|(fuse|breaker).*(blow|blew|goes|gone|went|pop|melt|burn|drop|out|keeps)|\bblew\b|short circuit")]
    private static partial Regex TripsSaid();

    [GeneratedRegex(@"backwards?|wrong (way|direction)|other way|opposite|revers|invert|mirror|away from")]
    private static partial Regex BackwardsSaid();

    [GeneratedRegex(@"\bhum|\bbuzz|twitch|stutter|vibrat|jitter|shak(e|es|ing)\b|whin|grind|jerk|rattl")]
    private static partial Regex HumsSaid();

    [GeneratedRegex(@"always|all the time|never (stops?|turns? off|goes off|cools?)|(wont|will not|does ?nt|doesnt|does not|dont|do not|cannot|cant) (stop|switch off|turn off|go off|cool|go out)|stays? (on|hot|lit)|runs? (even )?(when|while|though|with)|still (on|runs?|running|hot|lit)|(on|hot|warm|heats?|turns?|spins?|running|lit) (even )?(when|while|though|without|although|with).*(off|nothing|no command|not commanded|without)|keeps? (on )?(running|heating|turning|spinning)")]
    private static partial Regex AlwaysOnSaid();

    [GeneratedRegex(@"\bnot\b|nt\b|\bno\b|never|\bwont\b|\bdead\b|nothing|cold|dark|black|blank|refuses|fails?|failed|stuck|still|stands?|stopped|without|\boff\b|broken|free to turn|loose|no longer")]
    private static partial Regex DeadSaid();
}
