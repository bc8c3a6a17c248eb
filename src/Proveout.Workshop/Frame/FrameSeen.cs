using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>From what is seen at a frame, with what was measured at it, to suspects and the check worth most.</summary>
public static class FrameSeen
{
    // A frame whose sides nobody gave: only the limits of diagonals and stops depend on it.
    private const double UsualMillimetres = 300;

    /// <summary>What can be seen.</summary>
    public static IReadOnlyList<SeenQuestion> Questions => FrameSymptoms.Questions;

    /// <summary>The outcomes that a person's words mean, and readings written as <c>check=value</c>.</summary>
    public static Outcome<IReadOnlyDictionary<string, double>> Answers(IEnumerable<string> seen, IEnumerable<string> read) =>
        SeenWords.Read(FrameCampaign.Of(new FrameDesign(UsualMillimetres, UsualMillimetres, UsualMillimetres)).Dictionary, Questions, seen, read);

    /// <summary>What the answers say; measured diagonals, feet and stops count as readings beside them.</summary>
    internal static SeenView Of(TypedFigures typed, IReadOnlyDictionary<string, double> answers)
    {
        var campaign = FrameCampaign.Of(DesignOf(typed));
        var all = Measured(typed).Concat(answers).GroupBy(answer => answer.Key, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Last().Value, StringComparer.Ordinal);
        var view = SeenDiagnosis.Of(campaign.Dictionary, campaign, Questions, all);
        return view with { Readings = view.Readings.Where(reading => answers.ContainsKey(reading.Key)).ToDictionary(StringComparer.Ordinal) };
    }

    /// <summary>What can be seen, before anybody said anything.</summary>
    public static IReadOnlyList<SeenAnswer> Open { get; } = [.. FrameSymptoms.Questions.Select(question => new SeenAnswer(question, null))];

    /// <summary>Identifiers of everything that can be said: sights, and checks that can be read.</summary>
    public static IReadOnlyList<string> Ids { get; } =
        [.. FrameCampaign.Of(new FrameDesign(UsualMillimetres, UsualMillimetres, UsualMillimetres)).Dictionary.Checks.Select(check => check.Id)];

    /// <summary>True when the sides were given, so that limits are those of this frame.</summary>
    internal static bool HasSides(TypedFigures typed) => Side(typed, 0, 2) is not null && Side(typed, 3, 1) is not null;

    private static FrameDesign DesignOf(TypedFigures typed)
    {
        var width = Side(typed, 0, 2) ?? UsualMillimetres;
        return new FrameDesign(width, Side(typed, 3, 1) ?? UsualMillimetres, typed.Has(FrameFields.Span) ? typed.Require(FrameFields.Span) : width)
        {
            SquareLimit = typed.Require(FrameFields.Limit) / 200,
            TwistLimitMillimetres = typed.Require(FrameFields.TwistLimit),
            RailLimitMillimetres = typed.Require(FrameFields.RailLimit),
            TapeErrorMillimetres = typed.Require(FrameFields.TapeError),
            FeelerErrorMillimetres = Math.Max(typed.Require(FrameFields.StopError), 2 * typed.Require(FrameFields.HeightError)),
            DialErrorMillimetres = typed.Require(FrameFields.DialError),
        };
    }

    private static double? Side(TypedFigures typed, int one, int other) => typed.Read(FrameFields.Distances[one]) ?? typed.Read(FrameFields.Distances[other]);

    private static IEnumerable<KeyValuePair<string, double>> Measured(TypedFigures typed)
    {
        if (typed.Has(FrameFields.Distances[4]) && typed.Has(FrameFields.Distances[5]))
            yield return new("diagonals", typed.Require(FrameFields.Distances[4]) - typed.Require(FrameFields.Distances[5]));
        if (FrameFields.Heights.All(typed.Has))
        {
            double[] heights = [.. FrameFields.Heights.Select(typed.Require)];
            yield return new("feet", heights[0] - heights[1] + heights[2] - heights[3]);
        }

        if (typed.Has(FrameFields.LeftGap) && typed.Has(FrameFields.RightGap))
            yield return new("stops", typed.Require(FrameFields.RightGap) - typed.Require(FrameFields.LeftGap));
    }
}
