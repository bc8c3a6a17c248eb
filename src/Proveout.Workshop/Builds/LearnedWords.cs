using System.Globalization;
using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Says what builds have taught of how often mistakes are made.</summary>
internal static class LearnedWords
{
    private const int MostKinds = 8;

    // Within a fifth of what was assumed, nothing worth a sentence was learned.
    private const double Noteworthy = 1.2;

    /// <summary>What was learned, in sentences; that nothing was, when nothing was.</summary>
    public static IReadOnlyList<string> Of(LearnedPriors learned)
    {
        if (learned == LearnedPriors.Nothing)
            return ["Nothing yet: no build of this workshop records a mistake that was found. Until one does, the rates that Proveout assumes stand."];
        LearnedKind[] changed = [.. learned.Kinds.Where(kind => kind.Factor > Noteworthy || kind.Factor < 1 / Noteworthy)];
        return
        [
            .. changed.OrderByDescending(kind => Math.Abs(Math.Log(kind.Factor))).Take(MostKinds).Select(Sentence),
            .. changed.Length > MostKinds ? [string.Create(CultureInfo.InvariantCulture, $"{changed.Length - MostKinds} more kinds are taken otherwise than assumed, by less.")] : Array.Empty<string>(),
            "Suspects are ranked by these rates; which checks are made does not depend on them.",
        ];
    }

    private static string Sentence(LearnedKind kind) => string.Create(
        CultureInfo.InvariantCulture,
        $"{WordsOf(kind.Kind)}: {kind.Found} found where {kind.Expected:0.##} were expected; taken as {Times(kind.Factor)} as likely as assumed.");

    private static string Times(double factor) => factor switch
    {
        >= 10 => string.Create(CultureInfo.InvariantCulture, $"{factor:0} times"),
        >= 0.1 => string.Create(CultureInfo.InvariantCulture, $"{factor:0.0} times"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{factor:0.###} times"),
    };

    private static string WordsOf(string kind) => WiringFaultRules.All.FirstOrDefault(rule => rule.Kind == kind)?.Words ?? kind.Replace('-', ' ');
}
