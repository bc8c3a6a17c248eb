using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Checks of pulleys and idlers by hand, and the torques of their screws, for faces.</summary>
public static class BeltHandChecks
{
    /// <summary>The checks, in the order to do them.</summary>
    public static IReadOnlyList<HandCheck> All => HandChecks.All;

    /// <summary>Torques: screw, newton metres, remark.</summary>
    public static IReadOnlyList<(string Screw, double NewtonMetres, string Remark)> Torques => HandChecks.Torques;
}
