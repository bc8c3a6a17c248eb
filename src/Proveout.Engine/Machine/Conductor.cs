using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>One conductor: a wire or a core of a cable, with its two ends.</summary>
/// <param name="Id">Identifier, such as <c>W12</c>; unique in the machine and printed on its labels.</param>
/// <param name="From">Terminal that its first end lands on.</param>
/// <param name="To">Terminal that its second end lands on.</param>
/// <param name="CrossSection">Nominal cross-section of the copper.</param>
/// <param name="Colour">Colour of the insulation.</param>
/// <param name="Length">Length from end to end, as cut.</param>
/// <param name="Route">Names of the routes it runs through, in order; empty when it runs free.</param>
public sealed record Conductor(
    string Id,
    TerminalReference From,
    TerminalReference To,
    Area CrossSection,
    ConductorColour Colour,
    Length Length,
    ValueList<string> Route)
{
    /// <summary>True when the file does not give its length, which then follows from where its ends are and the routes between.</summary>
    public bool LengthIsComputed { get; init; }

    /// <summary>What it is made of besides copper and colour.</summary>
    public ConductorMake Make { get; init; } = ConductorMake.Unsaid;
}
