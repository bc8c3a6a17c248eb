using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The least resistance that a sound element has to a meter.</summary>
internal static class LeastOhms
{
    /// <summary>Ohms; for insulation its limit, infinite for a junction.</summary>
    public static double Of(NetworkElement element) => element.Part is Insulation insulation ? insulation.AtLeast.Ohms : element.LowOhms;
}
