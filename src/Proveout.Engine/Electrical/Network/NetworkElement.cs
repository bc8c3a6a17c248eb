using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An element of the wiring network: a resistance between two limits.</summary>
/// <param name="Index">Number of the element, from 0.</param>
/// <param name="Kind">What it is.</param>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="LowOhms">Lowest resistance, above zero.</param>
/// <param name="NominalOhms">Resistance to expect; infinite when it usually reads open.</param>
/// <param name="HighOhms">Highest resistance; infinite when it may be open.</param>
/// <param name="Subject">Conductor identifier or part designation.</param>
/// <param name="Name">Name on the part: of the element, the terminal, the jumper; empty for copper.</param>
/// <param name="Part">The primitive it stands for; null for joints, matings, copper and jumpers.</param>
public sealed record NetworkElement(
    int Index,
    ElementKind Kind,
    int A,
    int B,
    double LowOhms,
    double NominalOhms,
    double HighOhms,
    string Subject,
    string Name,
    CircuitElement? Part)
{
    /// <summary>Resistance below which two nodes count as the same metal, in ohms.</summary>
    public const double MetalOhms = 1;

    /// <summary>True when the element is metal through and through, whatever its tolerance.</summary>
    public bool IsMetal => HighOhms < MetalOhms;
}
