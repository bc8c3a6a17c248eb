namespace Proveout.Workshop;

/// <summary>Cuts pieces from reels of one length, longest first, each from the first reel that still holds it (first fit decreasing).</summary>
/// <remarks>It takes at most 11/9 of the fewest reels, and two thirds of a reel more (Dósa, 2007).</remarks>
internal static class ReelCutting
{
    /// <summary>The pieces of each reel, in the order of cutting; a piece longer than a reel is its own reel, to be bought at its length.</summary>
    /// <param name="pieces">What to cut.</param>
    /// <param name="reelMm">Length of a reel.</param>
    /// <param name="lengthMm">Length of a piece.</param>
    public static IReadOnlyList<IReadOnlyList<T>> Cut<T>(IEnumerable<T> pieces, double reelMm, Func<T, double> lengthMm)
    {
        var reels = new List<(List<T> Pieces, double LeftMm)>();
        foreach (var piece in pieces.OrderByDescending(lengthMm))
        {
            var length = lengthMm(piece);
            var at = reels.FindIndex(reel => reel.LeftMm >= length);
            if (at < 0)
                reels.Add(([piece], reelMm - length));
            else
            {
                reels[at].Pieces.Add(piece);
                reels[at] = (reels[at].Pieces, reels[at].LeftMm - length);
            }
        }

        return [.. reels.Select(reel => reel.Pieces)];
    }
}
