namespace Proveout.Engine.Faults;

/// <summary>Faults that no candidate check tells apart: every check may show the same under each of them.</summary>
/// <param name="Faults">Indices of the faults, rising.</param>
public sealed record AmbiguityGroup(IReadOnlyList<int> Faults)
{
    /// <summary>Groups faults that have the same interval at every check.</summary>
    public static IReadOnlyList<AmbiguityGroup> Of(FaultDictionary dictionary, IEnumerable<int> faults)
    {
        int[] asked = [.. faults];
        return
        [
            .. asked.Zip(dictionary.ResponsesOf(asked))
                .GroupBy(item => item.Second, item => item.First, new SameResponse())
                .Select(group => new AmbiguityGroup([.. group.Order()])),
        ];
    }

    // Intervals that differ by less than a meter's last digit are the same to any instrument.
    private sealed class SameResponse : IEqualityComparer<FaultResponse>
    {
        public bool Equals(FaultResponse? one, FaultResponse? two) =>
            one!.Checks.AsSpan().SequenceEqual(two!.Checks)
            && one.Intervals.Zip(two.Intervals).All(pair => AreSame(pair.First.Low, pair.Second.Low) && AreSame(pair.First.High, pair.Second.High));

        public int GetHashCode(FaultResponse response)
        {
            var hash = default(HashCode);
            foreach (var check in response.Checks)
                hash.Add(check);
            return hash.ToHashCode();
        }

        private static bool AreSame(double one, double two) => one.Equals(two) || Math.Abs(one - two) <= 1e-3 * Math.Max(Math.Abs(one), Math.Abs(two)) + 1e-3;
    }
}
