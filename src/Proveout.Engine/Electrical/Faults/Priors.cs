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
    public const double LineNeutralSwapped = 5e-3;
    public const double EndsExchanged = 3e-4;
    public const double ConductorsExchanged = 1e-3;
    public const double ContactsMirrored = 3e-3;
    public const double ContactsShifted = 1e-3;
    public const double PlugShifted = 3e-3;
    public const double PlugReversed = 5e-3;
    public const double SidesExchanged = 1e-3;
    public const double PartsExchanged = 3e-3;
    public const double AheadOfSwitch = 1e-3;
    public const double ContactSense = 5e-3;
    public const double ContactStuckClosed = 2e-4;
    public const double ContactNeverCloses = 3e-4;
    public const double SwitchShorted = 5e-4;
    public const double ProtectionBypassed = 5e-4;
    public const double BondExtra = 1e-3;
    public const double BridgeToMetal = 3e-4;
    public const double BridgeInCable = 1e-4;
    public const double BodyContact = 5e-4;
    public const double InsulationBroken = 1e-4;
    public const double Leakage = 5e-4;
    public const double WeakJoint = 3e-3;
    public const double ContactPushedBack = 1e-3;
    public const double PoorMating = 5e-4;
    public const double JumperAcross = 3e-3;
    public const double JumperExtra = 3e-3;
    public const double TerminatorExtra = 5e-3;
    public const double ElementOpen = 1e-3;
    public const double ElementShorted = 5e-4;
    public const double SensorOtherType = 3e-3;
    public const double SuppliesJoined = 5e-4;
    public const double DataCoresMissing = 3e-3;
}
