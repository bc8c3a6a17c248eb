namespace Proveout.Engine.Motion;

/// <summary>Two belts of one kind, plucked with the machine in the same position.</summary>
/// <param name="Left">Note of the left one, in Hz.</param>
/// <param name="Right">Note of the right one, in Hz.</param>
/// <param name="LeftMetres">Its free length, in m.</param>
/// <param name="RightMetres">Its free length, in m.</param>
public sealed record BeltPair(Uncertain Left, Uncertain Right, Uncertain LeftMetres, Uncertain RightMetres)
{
    /// <summary>Difference of the forces of a pair that is still called equal, as a share: 3 to 5 % of the note, 6 to 10 % of the force (common practice).</summary>
    public const double UsualLimit = 0.08;

    /// <summary>How much more force the left belt has than the right, as a share of their mean. The mass per length is the same in both and cancels.</summary>
    public Uncertain Difference
    {
        get
        {
            var ratio = Math.Pow(Left.Value * LeftMetres.Value / (Right.Value * RightMetres.Value), 2);
            var relative = 2 * Uncertain.Combine(Left.Relative, Right.Relative, LeftMetres.Relative, RightMetres.Relative);
            // d = 2 (r - 1) / (r + 1), so that dd/dr = 4 / (r + 1)².
            return new(2 * (ratio - 1) / (ratio + 1), 4 * ratio / ((ratio + 1) * (ratio + 1)) * relative);
        }
    }

    /// <summary>Whether the pair is equal within a limit, minding the uncertainty.</summary>
    /// <param name="limit">The limit, as a share of the force.</param>
    public PairVerdict Judge(double limit = UsualLimit)
    {
        var difference = Difference;
        var (size, expanded) = (Math.Abs(difference.Value), difference.Expanded);
        return size + expanded <= limit ? PairVerdict.Equal
            : size - expanded > limit ? difference.Value > 0 ? PairVerdict.LeftTighter : PairVerdict.RightTighter
            : PairVerdict.CannotTell;
    }
}
