namespace Proveout.Engine.Machine;

/// <summary>Finds sources of a part type that contradict each other: round a loop of sources their voltages must add to nothing.</summary>
/// <remarks>Kirchhoff's voltage law; two sources in parallel are the shortest loop.</remarks>
internal sealed class SourceChecks
{
    // Voltages in files are written with a few digits; absolute below a volt, else relative.
    private const double SameVolts = 1e-6;

    private readonly Dictionary<string, (string Above, double Volts)> _above = new(StringComparer.Ordinal);

    private SourceChecks()
    {
    }

    /// <summary>Adds a problem at each source that closes a loop whose voltages do not add to nothing.</summary>
    public static void Check(PartType type, Node node, Problems problems)
    {
        var checks = new SourceChecks();
        foreach (var source in type.Circuit.OfType<Source>().Where(source => source.A.Length > 0 && source.B.Length > 0 && source.A != source.B))
            if (checks.Join(source) is { } already && Math.Abs(already - source.Voltage.Volts) > SameVolts * Math.Max(1, source.Voltage.Volts))
                problems.Add(
                    "sources-contradict",
                    node.Under("circuit").Under(source.Name).Under("voltage").Place,
                    FormattableString.Invariant($"The source {Quote.Of(source.Name)} gives {source.Voltage.Volts:0.###} V between {Quote.Of(source.A)} and {Quote.Of(source.B)}, where other sources of {Quote.Of(type.Id)} give {already:0.###} V."),
                    "Give both the same voltage, or put a resistance between them.");
    }

    // The volts that other sources put between the two poles already; null when none does, and the source then joins them.
    private double? Join(Source source)
    {
        var (rootOfA, aboveA) = Root(source.A);
        var (rootOfB, aboveB) = Root(source.B);
        if (rootOfA == rootOfB)
            return aboveA - aboveB;
        _above[rootOfA] = (rootOfB, source.Voltage.Volts + aboveB - aboveA);
        return null;
    }

    private (string Root, double Volts) Root(string node)
    {
        var volts = 0.0;
        while (_above.TryGetValue(node, out var step))
            (node, volts) = (step.Above, volts + step.Volts);
        return (node, volts);
    }
}
