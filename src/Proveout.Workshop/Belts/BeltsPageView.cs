namespace Proveout.Workshop;

/// <summary>What the page of belts shows.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Belts">What is known of its belts; null when its file has none.</param>
/// <param name="Drawings">A drawing for each plane, as SVG elements.</param>
/// <param name="Places">Where the axes stand in them, in mm.</param>
public sealed record BeltsPageView(MachineSummary Machine, BeltsView? Belts, IReadOnlyList<(string Plane, string Svg)> Drawings, IReadOnlyList<double> Places)
{
    /// <summary>What was seen, and what explains it; nothing said yet when nobody did; null without belts.</summary>
    public SeenView? Seen { get; init; }

    /// <summary>Planes, each with an axis that moves something in it: a film can be had of each.</summary>
    public IReadOnlyList<(string Plane, string Axis)> Films { get; init; } = [];
}
