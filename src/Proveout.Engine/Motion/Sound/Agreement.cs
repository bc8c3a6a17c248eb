namespace Proveout.Engine.Motion;

/// <summary>One figure from several plucks of one span.</summary>
internal static class Agreement
{
    /// <summary>The weighted mean; its uncertainty is the larger of what the plucks claim and what their scatter shows (Birge 1932, as in the evaluations of constants).</summary>
    public static PluckedPitch Of(PluckedPitch best, IReadOnlyList<PluckedPitch> agreeing)
    {
        if (agreeing.Count == 1)
            return best;
        var weights = agreeing.Sum(pitch => Weight(pitch));
        var mean = agreeing.Sum(pitch => Weight(pitch) * pitch.FundamentalHertz) / weights;
        var scatter = agreeing.Sum(pitch => Weight(pitch) * (pitch.FundamentalHertz - mean) * (pitch.FundamentalHertz - mean)) / ((agreeing.Count - 1) * weights);
        return best with
        {
            FundamentalHertz = mean,
            StandardHertz = Math.Sqrt(Math.Max(1 / weights, scatter)),
            PluckCount = agreeing.Count,
        };
    }

    private static double Weight(PluckedPitch pitch) => 1 / (pitch.StandardHertz * pitch.StandardHertz);
}
