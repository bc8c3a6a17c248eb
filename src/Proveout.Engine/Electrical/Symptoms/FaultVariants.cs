namespace Proveout.Engine.Electrical;

/// <summary>The ends of a fault's own tolerance, each as a fault without one.</summary>
internal static class FaultVariants
{
    // Narrower bands change no symptom, and no reading beyond its own band.
    private const double WideRatio = 1.5;
    private const double WideOhms = 0.2;

    // No more than what a sound joint may have (5 to 100 mohm): nothing is changed by it.
    private const double SoundOhms = 0.1;

    /// <summary>One variant, or both ends when any change has a wide band; none of the changes where they leave the machine sound.</summary>
    public static IReadOnlyList<IReadOnlyList<ElementChange>> Of(IReadOnlyList<ElementChange> changes) =>
        !changes.Any(IsWide) ? [changes]
        : changes.All(change => change is AddInSeries { LowOhms: <= SoundOhms }) ? [[], [.. changes.Select(AtHigh)]]
        : [[.. changes.Select(AtLow)], [.. changes.Select(AtHigh)]];

    private static bool IsWide(ElementChange change) => change switch
    {
        AddInSeries added => IsWide(added.LowOhms, added.HighOhms),
        Join join => IsWide(join.LowOhms, join.HighOhms),
        Replace replace => IsWide(replace.LowOhms, replace.HighOhms),
        _ => false,
    };

    private static bool IsWide(double low, double high) => high > WideRatio * low && high > WideOhms;

    private static ElementChange AtLow(ElementChange change) => change switch
    {
        AddInSeries added => added with { HighOhms = added.LowOhms },
        Join join => join with { HighOhms = join.LowOhms },
        Replace replace => replace with { HighOhms = replace.LowOhms },
        _ => change,
    };

    private static ElementChange AtHigh(ElementChange change) => change switch
    {
        AddInSeries added => added with { LowOhms = added.HighOhms },
        Join join => join with { LowOhms = join.HighOhms },
        Replace replace when double.IsPositiveInfinity(replace.HighOhms) => new Cut(replace.Element),
        Replace replace => replace with { LowOhms = replace.HighOhms },
        _ => change,
    };
}
