namespace Proveout.Engine.Electrical;

/// <summary>By how much what flows may differ from what part types say, common practice.</summary>
internal static class LossShares
{
    /// <summary>Electronics and fans take at least this share of what their types say at most.</summary>
    public const double Least = 0.6;

    /// <summary>And no more than this.</summary>
    public const double Most = 1.1;

    /// <summary>A number of watts or amperes in a sentence.</summary>
    public static string Number(double value) => ReviewContext.Number(value, value < 10 ? 2 : 0);
}
