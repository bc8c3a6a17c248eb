using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>How much current a copper conductor with PVC insulation bears at 40 °C, one circuit alone: IEC 60204-1:2016 table 6.</summary>
public static class CurrentCapacity
{
    // Cross-section in mm²; amperes by method B1, B2, C, E. B2 and E from 0.75 mm² seen in a drive maker's extract of table 6, B1 and C from memory;
    // from 1.5 mm² every value is IEC 60364-5-52 table B.52.4 times 0.87. Below 0.75 mm²: a cable maker's guide values after DIN VDE 0298-4 at 30 °C
    // times 0.87 (IEC 60364-5-52 table B.52.14), the same for every method; makers differ.
    private static readonly (double SquareMillimetres, double[] Amperes)[] Rows =
    [
        (0.05, Guide(1)), (0.14, Guide(2)), (0.25, Guide(4.5)), (0.34, Guide(6)), (0.5, Guide(9)),
        (0.75, [8.6, 8.5, 9.8, 10.4]),
        (1.0, [10.3, 10.1, 11.7, 12.4]),
        (1.5, [13.5, 13.1, 15.2, 16.1]),
        (2.5, [18.3, 17.4, 21, 22]),
        (4, [24, 23, 28, 30]),
        (6, [31, 30, 36, 37]),
        (10, [44, 40, 50, 52]),
        (16, [59, 54, 66, 70]),
        (25, [77, 70, 84, 88]),
        (35, [96, 86, 104, 110]),
    ];

    /// <summary>Where the value comes from, to show beside it.</summary>
    public static string SourceFor(double squareMillimetres, InstallationMethod method = InstallationMethod.B1) =>
        squareMillimetres < 0.75 ? "guide values after DIN VDE 0298-4" : $"IEC 60204-1 table 6, method {method}";

    /// <summary>Amperes; straight lines between the sizes of the table, never above its end.</summary>
    public static double Of(double squareMillimetres, InstallationMethod method = InstallationMethod.B1)
    {
        var column = (int)method;
        if (squareMillimetres <= Rows[0].SquareMillimetres)
            return Rows[0].Amperes[column] * squareMillimetres / Rows[0].SquareMillimetres;
        for (var row = 1; row < Rows.Length; row++)
            if (squareMillimetres <= Rows[row].SquareMillimetres)
            {
                var (below, above) = (Rows[row - 1], Rows[row]);
                var share = (squareMillimetres - below.SquareMillimetres) / (above.SquareMillimetres - below.SquareMillimetres);
                return below.Amperes[column] + (share * (above.Amperes[column] - below.Amperes[column]));
            }

        return Rows[^1].Amperes[column];
    }

    private static double[] Guide(double at30) => [at30 * 0.87, at30 * 0.87, at30 * 0.87, at30 * 0.87];
}
