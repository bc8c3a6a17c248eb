namespace Proveout.Engine.Electrical;

/// <summary>
/// How likely a careful builder makes one particular mistake in one build, before any reading. Orders of magnitude from memory; journals will teach better ones.
/// </summary>
internal static class Priors
{
    public const double ConductorMissing = 2e-3;
    public const double BondMissing = 4e-3;
    public const double EndOnNeighbour = 1e-3;
    public const double EndsSwapped = 2e-3;
    public const double Bridge = 3e-4;
    public const double PoorJoint = 2e-3;
    public const double JumperWrong = 1e-2;
    public const double JumperMissing = 5e-3;
    public const double WrongValue = 2e-3;
    public const double FuseOpen = 4e-3;
    public const double PartReversed = 5e-3;
    public const double ConnectorsExchanged = 2e-3;
}
