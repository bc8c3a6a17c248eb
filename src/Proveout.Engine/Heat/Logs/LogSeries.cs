namespace Proveout.Engine.Heat;

/// <summary>A column of a log, thinned: mean, least and most of the rows that fall together; not numbers where there is none.</summary>
/// <param name="Name">Its heading without the unit.</param>
/// <param name="Stem">The words of its heading that tell which heater it belongs to; may be empty.</param>
/// <param name="Mean">Means.</param>
/// <param name="Least">Least values.</param>
/// <param name="Most">Most values.</param>
public sealed record LogSeries(string Name, string Stem, double[] Mean, double[] Least, double[] Most)
{
    /// <summary>All values times a factor.</summary>
    internal LogSeries Times(double factor) => this with { Mean = Scaled(Mean, factor), Least = Scaled(Least, factor), Most = Scaled(Most, factor) };

    private static double[] Scaled(double[] values, double factor) => [.. values.Select(value => value * factor)];
}
