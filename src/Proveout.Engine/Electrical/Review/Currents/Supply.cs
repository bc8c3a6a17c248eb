using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What feeds the wiring: the mains at its inlet, or a source inside a part.</summary>
/// <param name="Name">What it is called, such as <c>the mains at X1</c>.</param>
/// <param name="Plus">Node of the positive pole, or of the line.</param>
/// <param name="Zero">Node of the negative pole, or of the neutral.</param>
/// <param name="Volts">Voltage between them.</param>
/// <param name="LimitAmperes">Most that it delivers; infinite when not limited.</param>
/// <param name="IsMains">True for the mains.</param>
public sealed record Supply(string Name, int Plus, int Zero, double Volts, double LimitAmperes, bool IsMains)
{
    /// <summary>The part that holds the source; null for the mains.</summary>
    public Part? Part { get; init; }

    /// <summary>The source; null for the mains.</summary>
    public Source? Source { get; init; }
}
