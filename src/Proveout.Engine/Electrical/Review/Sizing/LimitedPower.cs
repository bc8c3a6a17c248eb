namespace Proveout.Engine.Electrical;

/// <summary>Sources too weak to start a fire in a thin lead: IEC 62368-1 annex Q, limited power source with its limit inside (from memory).</summary>
internal static class LimitedPower
{
    private const double MostVolts = 30;
    private const double MostAmperes = 8;
    private const double MostVoltAmperes = 100;

    public static bool Is(Supply supply) =>
        !supply.IsMains && supply.Volts <= MostVolts && supply.LimitAmperes <= MostAmperes && supply.LimitAmperes * supply.Volts <= MostVoltAmperes;

    /// <summary>How much it matters that a conductor behind a supply bears less than can flow.</summary>
    public static FindingSeverity SeverityOf(Supply supply, double squareMillimetres) =>
        Is(supply) ? FindingSeverity.Note
        : supply.Volts >= 50 || squareMillimetres >= 0.5 ? FindingSeverity.Error
        : FindingSeverity.Warning;
}
