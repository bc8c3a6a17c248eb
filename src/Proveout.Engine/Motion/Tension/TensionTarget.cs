namespace Proveout.Engine.Motion;

/// <summary>The band that a force should lie in, in N.</summary>
/// <param name="LowNewtons">Its lower end.</param>
/// <param name="HighNewtons">Its upper end.</param>
public sealed record TensionTarget(double LowNewtons, double HighNewtons)
{
    /// <summary>Half-width of a band around a single figure, as a share (common practice: a belt is set within a tenth).</summary>
    public const double UsualShare = 0.1;

    /// <summary>The middle.</summary>
    public double Newtons => (LowNewtons + HighNewtons) / 2;

    /// <summary>A band around a figure.</summary>
    public static TensionTarget Around(double newtons, double share = UsualShare) => new(newtons * (1 - share), newtons * (1 + share));

    /// <summary>Whether a force lies in the band, minding its uncertainty.</summary>
    public TensionVerdict Judge(Uncertain newtons)
    {
        var (low, high) = (newtons.Value - newtons.Expanded, newtons.Value + newtons.Expanded);
        return low >= LowNewtons && high <= HighNewtons ? TensionVerdict.Right
            : high < LowNewtons ? TensionVerdict.TooLoose
            : low > HighNewtons ? TensionVerdict.TooTight
            : TensionVerdict.CannotTell;
    }
}
