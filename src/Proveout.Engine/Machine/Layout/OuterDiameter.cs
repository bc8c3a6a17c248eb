namespace Proveout.Engine.Machine;

/// <summary>Diameter of conductors over their insulation.</summary>
public static class OuterDiameter
{
    // Hook-up wire with PVC insulation by cross-section, in mm: middle of what makers list, common practice.
    private static readonly (double SquareMillimetres, double Millimetres)[] HookUp =
    [
        (0.08, 0.9), (0.14, 1.15), (0.22, 1.25), (0.34, 1.45), (0.5, 1.85), (0.75, 2.25), (1.0, 2.45), (1.5, 2.85), (2.5, 3.4), (4, 4.0), (6, 4.6), (10, 6.0),
    ];

    /// <summary>Millimetres: what the machine file says, or what wire of the cross-section usually has.</summary>
    public static double Of(Conductor conductor) => conductor.Make.Diameter?.Millimeters ?? Usual(conductor.CrossSection.SquareMillimeters);

    /// <summary>Conductors of a route, a cable with a diameter of its own counted once.</summary>
    public static IReadOnlyList<Conductor> Bodies(IEnumerable<Conductor> conductors) =>
        [.. conductors.DistinctBy(conductor => conductor.Make is { Cable.Length: > 0, Diameter: not null } ? "cable " + conductor.Make.Cable : "wire " + conductor.Id)];

    /// <summary>Square millimetres that conductors take up side by side: round wires leave gaps, so the square around each counts, n·d² (common practice).</summary>
    public static double RoomOf(IEnumerable<Conductor> conductors) => Bodies(conductors).Sum(conductor => Math.Pow(Of(conductor), 2));

    private static double Usual(double squareMillimetres)
    {
        for (var row = 1; row < HookUp.Length; row++)
            if (squareMillimetres <= HookUp[row].SquareMillimetres)
            {
                var (below, above) = (HookUp[row - 1], HookUp[row]);
                var share = (squareMillimetres - below.SquareMillimetres) / (above.SquareMillimetres - below.SquareMillimetres);
                return below.Millimetres + (Math.Max(0, share) * (above.Millimetres - below.Millimetres));
            }

        return HookUp[^1].Millimetres * Math.Sqrt(squareMillimetres / HookUp[^1].SquareMillimetres);
    }
}
