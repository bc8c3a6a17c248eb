namespace Proveout.Engine.Electrical;

/// <summary>How much current a copper conductor bears in a machine: PVC, 40 °C around it, single cores in duct.</summary>
internal static class CurrentCapacity
{
    // Cross-section in mm², amperes. From 0.75 mm²: IEC 60204-1:2016 table 6, method B1 (from memory). Below: guide values of a cable maker after
    // DIN VDE 0298-4 at 30 °C times 0.87 for 40 °C (IEC 60364-5-52 table B.52.14).
    private static readonly (double SquareMillimetres, double Amperes)[] Table =
    [
        (0.05, 1 * 0.87), (0.14, 2 * 0.87), (0.25, 4.5 * 0.87), (0.34, 6 * 0.87), (0.5, 9 * 0.87),
        (0.75, 8.6), (1.0, 10.3), (1.5, 13.5), (2.5, 18.3), (4, 24), (6, 31), (10, 44),
    ];

    /// <summary>Where the value comes from, to show beside it.</summary>
    public static string SourceFor(double squareMillimetres) =>
        squareMillimetres < 0.75 ? "guide values after DIN VDE 0298-4" : "IEC 60204-1 table 6, method B1";

    /// <summary>Amperes; straight lines between the sizes of the table, never above its end.</summary>
    public static double Of(double squareMillimetres)
    {
        if (squareMillimetres <= Table[0].SquareMillimetres)
            return Table[0].Amperes * squareMillimetres / Table[0].SquareMillimetres;
        for (var row = 1; row < Table.Length; row++)
            if (squareMillimetres <= Table[row].SquareMillimetres)
            {
                var (below, above) = (Table[row - 1], Table[row]);
                var part = (squareMillimetres - below.SquareMillimetres) / (above.SquareMillimetres - below.SquareMillimetres);
                return below.Amperes + (part * (above.Amperes - below.Amperes));
            }

        return Table[^1].Amperes;
    }
}
