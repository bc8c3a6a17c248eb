using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What takes capacity from a conductor: warm air, and loaded circuits beside it.</summary>
public static class CapacityFactors
{
    private const double PvcLimit = 70;
    private const double TableAmbient = 40;

    // IEC 60204-1 table D.2; between its columns 2, 4, 6 and 9 IEC 60364-5-52 table B.52.17. From memory.
    private static readonly double[] InTrunking = [1, 0.80, 0.70, 0.65, 0.60, 0.57, 0.54, 0.52, 0.50];
    private static readonly double[] OnWall = [1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.70];
    private static readonly double[] OnTray = [1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72];

    // IEC 60364-5-52 table B.52.17 row 1 beyond nine circuits.
    private static readonly (int Circuits, double Factor)[] Many = [(12, 0.45), (16, 0.41), (20, 0.38)];

    /// <summary>Factor for the air around PVC insulation: the law behind IEC 60204-1 table D.1, √((70 − t)/(70 − 40)), and none below 30 °C.</summary>
    public static double ForAmbient(double celsius) =>
        Math.Sqrt(Math.Max(0, PvcLimit - Math.Max(30, celsius)) / (PvcLimit - TableAmbient));

    /// <summary>Factor for a number of loaded circuits side by side, IEC 60204-1 table D.2.</summary>
    public static double ForGroup(int circuits, InstallationMethod method)
    {
        var row = method switch
        {
            InstallationMethod.C => OnWall,
            InstallationMethod.E => OnTray,
            _ => InTrunking,
        };
        if (circuits <= row.Length)
            return row[Math.Max(1, circuits) - 1];
        return method is InstallationMethod.C or InstallationMethod.E
            ? row[^1]
            : Many.FirstOrDefault(step => circuits <= step.Circuits, Many[^1]).Factor;
    }
}
