namespace Proveout.Engine.Machine;

/// <summary>A generic kind of part: terminals, connectors, controls, jumpers, and the circuit inside.</summary>
/// <param name="Id">Identifier in the catalogue, lower case with hyphens.</param>
/// <param name="Name">What the trade calls it.</param>
/// <param name="ClassLetter">Letter code for its designations, IEC 81346-2.</param>
/// <param name="Note">What a builder should know; where its values come from.</param>
/// <param name="ExposedConductivePart">True when a person can touch its metal and it could become live (IEC 60050-826, 826-12-10).</param>
/// <param name="Terminals">Terminals in the order in which they sit beside each other.</param>
/// <param name="Connectors">Groups of terminals that are made and broken together.</param>
/// <param name="Controls">Actuators that a person operates: switches, buttons, levers.</param>
/// <param name="Jumpers">Bridges that select.</param>
/// <param name="Circuit">The primitives inside, between terminals and inner nodes.</param>
public sealed record PartType(
    string Id,
    string Name,
    string ClassLetter,
    string Note,
    bool ExposedConductivePart,
    ValueList<Terminal> Terminals,
    ValueList<Connector> Connectors,
    ValueList<Control> Controls,
    ValueList<Jumper> Jumpers,
    ValueList<CircuitElement> Circuit)
{
    /// <summary>The room that it takes; null when not known.</summary>
    public Outline? Size { get; init; }

    /// <summary>Room that must stay free around it; null when none is asked for.</summary>
    public Clearances? Clearances { get; init; }

    /// <summary>At which edges its terminals sit.</summary>
    public TerminalSides Sides { get; init; } = TerminalSides.None;

    /// <summary>What its data sheet says besides.</summary>
    public PartRatings Ratings { get; init; } = PartRatings.None;

    /// <summary>False when its metal carries no protective bonding on: paint, an anodic layer, a slide or a hinge lies between.</summary>
    public bool CarriesBond { get; init; } = true;

    /// <summary>The terminal with a name, or null.</summary>
    public Terminal? FindTerminal(string name) => Terminals.FirstOrDefault(terminal => terminal.Name == name);

    /// <summary>The connector that a terminal belongs to, or null when the terminal stands alone and fixed.</summary>
    public Connector? ConnectorOf(string terminal) =>
        Connectors.FirstOrDefault(connector => connector.Terminals.Contains(terminal, StringComparer.Ordinal));
}
