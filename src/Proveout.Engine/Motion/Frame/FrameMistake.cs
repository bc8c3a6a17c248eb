using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>A mistake at a frame and by how much it moves each check, on top of what a sound frame shows.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="Kind">Kind of fault.</param>
/// <param name="Sentence">What is wrong.</param>
/// <param name="Consequence">What it does.</param>
/// <param name="Mend">What mends it and shows it beside the checks.</param>
/// <param name="Prior">How often a careful builder makes it (assumed).</param>
/// <param name="Effects">Least and most shift of each check that it moves, by the index of the check.</param>
internal sealed record FrameMistake(
    string Id, string Kind, string Sentence, string Consequence, string Mend, double Prior, IReadOnlyList<(int Check, double Low, double High)> Effects)
{
    private const double LeastAngle = 0.5 / 200;
    private const double MostAngle = 5.0 / 200;
    private const double LeastTwist = 1;
    private const double MostTwist = 5;
    private const double LeastGap = 1;
    private const double MostGap = 5;
    private const double LeastRail = 0.2;
    private const double MostRail = 2;

    // Rails shorter than the frame turn by a part of its twist.
    private const double LeastRailShare = 0.7;

    // Seen surely, or perhaps: shifts of a symptom that is 1 when all is well.
    private static readonly (double, double) Surely = (-1, -1);
    private static readonly (double, double) Perhaps = (-1, 0);

    /// <summary>Every mistake at a frame. How large a mistake is when it counts as one is assumed: well above what is sound, up to what an eye sees at once.</summary>
    public static IReadOnlyList<FrameMistake> Of(FrameDesign design) =>
    [
        .. Both("corner-not-square", "wide", "narrow", 0.05, way => $"Corner A is too {way}: the base is out of square.",
            "Parts come out skewed, and the gantry touches one stop first.", "Loosen the corners, draw the long diagonal together, tighten.",
            [(FrameCheck.Diagonals, design.DiagonalDifference(LeastAngle), design.DiagonalDifference(MostAngle)), (FrameCheck.Stops, design.SpanMillimetres * Math.Tan(LeastAngle), design.SpanMillimetres * Math.Tan(MostAngle))],
            [(FrameSymptoms.Skew, Perhaps), (FrameSymptoms.Touch, Surely)]),
        .. Both("frame-twisted", "A-C", "B-D", 0.05, way => $"The base is twisted: corners {way} stand high, and one rail is twisted against the other.",
            "Rails bind, and a plate map shows twist.", "Loosen the corners on a flat slab, press every foot down, tighten crosswise.",
            [(FrameCheck.Feet, LeastTwist, MostTwist), (FrameCheck.RailRise, LeastRailShare * LeastTwist, MostTwist)],
            [(FrameSymptoms.Bind, Perhaps), (FrameSymptoms.MapTwist, Perhaps)]),
        .. Both("gantry-racked", "right", "left", 0.05, way => $"The beam is racked: its {way} end stays behind.",
            "The gantry binds, and parts come out skewed.", "Loosen the beam, push both ends against their stops, tighten.",
            [(FrameCheck.Stops, design.SpanMillimetres * Math.Tan(LeastAngle), design.SpanMillimetres * Math.Tan(MostAngle)), (FrameCheck.Beam, 200 * LeastAngle, 200 * MostAngle)],
            [(FrameSymptoms.Skew, Surely), (FrameSymptoms.Touch, Surely), (FrameSymptoms.Bind, Perhaps)]),
        .. Both("stop-not-touched", "right", "left", 0.03, way => $"The {way} stop is misplaced: the gantry does not touch it.",
            "Whoever squares the gantry by its stops racks it.", "Set the stop to the same distance from the rail's end as the other.",
            [(FrameCheck.Stops, LeastGap, MostGap)],
            [(FrameSymptoms.Touch, Surely), (FrameSymptoms.Skew, Perhaps)]),
        .. Both("rail-crowned", "high", "low", 0.03, way => $"A rail is {way} between its ends: tightened from one end, or on an uneven face.",
            "The nozzle's height changes along the rail.", "Loosen the rail, tighten from the middle outward in two or three passes.",
            [(FrameCheck.RailMiddle, LeastRail, MostRail)],
            [(FrameSymptoms.Wave, Surely), (FrameSymptoms.Bind, Perhaps)]),
        .. Both("rail-not-parallel", "high", "low", 0.03, way => $"The far end of a rail is {way} against the other rail.",
            "The gantry rolls as it travels, and binds at one end.", "Shim the rail's end.",
            [(FrameCheck.RailRise, LeastRail, MostRail)],
            [(FrameSymptoms.Bind, Perhaps), (FrameSymptoms.MapTwist, Perhaps)]),
    ];

    /// <summary>The fault in the form that plan and diagnosis work on.</summary>
    public Fault ToFault() => new(Id, Kind, Sentence, [], Severity.DoesNotWork, Consequence, Prior, Mend);

    private static FrameMistake[] Both(
        string kind, string oneWay, string otherWay, double prior, Func<string, string> sentence, string consequence, string mend,
        (int Check, double From, double To)[] effects, (int Check, (double Low, double High) Shift)[] seen)
    {
        (int, double, double)[] both = [.. seen.Select(symptom => (symptom.Check, symptom.Shift.Low, symptom.Shift.High))];
        return
        [
            new($"{kind}:{oneWay}", kind, sentence(oneWay), consequence, mend, prior, [.. effects.Select(effect => (effect.Check, Math.Min(effect.From, effect.To), Math.Max(effect.From, effect.To))), .. both]),
            new($"{kind}:{otherWay}", kind, sentence(otherWay), consequence, mend, prior, [.. effects.Select(effect => (effect.Check, Math.Min(-effect.From, -effect.To), Math.Max(-effect.From, -effect.To))), .. both]),
        ];
    }
}
