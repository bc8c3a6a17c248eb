using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Switching on does not open a fuse: the peak of some milliseconds against its instantaneous trip.</summary>
internal sealed class InrushPasses : IReviewRule
{
    public string Id => "inrush-passes";

    public string Words => "peak current at switching on against fuses and breakers before it";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var peaks = InrushPeak.Of(context).ToArray();
        foreach (var fuse in peaks.SelectMany(Fuses).Distinct())
        {
            var (part, rating) = ((Fuse)fuse.Part!, ((Fuse)fuse.Part!).Rating!.Value.Amperes);
            var behind = peaks.Where(peak => peak.Way.Contains(fuse)).ToArray();
            var amperes = behind.Sum(peak => peak.Amperes);
            var (surelyPasses, surelyOpens) = Multiples(part.Curve!.Value);
            if (amperes > surelyPasses * rating)
                yield return Found(fuse, rating, [.. behind.Select(peak => peak.Part)], amperes, amperes > surelyOpens * rating, surelyPasses * rating);
        }
    }

    // Multiples of the rating: at up to the first it never acts within some milliseconds, above the second it does. IEC 60898-1 table 7 (B 3 to 5, C 5 to 10);
    // IEC 60127-2 at 10 times (sheet 2 at most 20 ms, sheet 3 at least 20 ms); ISO 8820-3 from memory.
    private static (double SurelyPasses, double SurelyOpens) Multiples(FuseCurve curve) => curve switch
    {
        FuseCurve.BreakerB => (3, 5),
        FuseCurve.BreakerC => (5, 10),
        FuseCurve.TimeLag => (10, 30),
        FuseCurve.Quick => (4, 10),
        _ => (6, 15),
    };

    private static IEnumerable<NetworkElement> Fuses(InrushPeak peak) => peak.Way.Where(element => element.Part is Fuse { Rating: not null, Curve: not (null or FuseCurve.Thermal) });

    private Finding Found(NetworkElement fuse, double rating, string[] parts, double amperes, bool opens, double passes) => new(
        Id,
        opens ? FindingSeverity.Warning : FindingSeverity.Note,
        [fuse.Subject, .. parts],
        $"{PathWords.List(parts)} {(parts.Length == 1 ? "draws" : "together draw")} {ReviewContext.Number(amperes)} A for some milliseconds when switched on; {PathWords.Plain(fuse)} ({ReviewContext.Number(rating)} A) surely passes {ReviewContext.Number(passes)} A and {(opens ? "opens" : "may open")}.",
        "Take a slower characteristic (C instead of B, time-lag instead of quick), a limiter of the peak, or switch the parts on one after the other.",
        "IEC 60898-1 table 7; IEC 60127-2")
    {
        Numbers = [new("peak", amperes, "A"), new("surely passes", passes, "A")],
    };
}
