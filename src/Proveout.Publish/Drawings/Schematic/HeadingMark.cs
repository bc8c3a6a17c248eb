using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>The small symbol beside the designation of a box whose inside is not drawn, IEC 60617 (from memory), as path data; 6 mm wide, 3.6 mm high.</summary>
internal static class HeadingMark
{
    // A square with a diagonal, the kind of current that goes in above it and that comes out below it.
    private const string Square = "M0 0H6V3.6H0ZM0 3.6L6 0";
    private const string AlternatingIn = "M0.7 1.3c0.4 -1.1 0.8 -1.1 1.2 0s0.8 1.1 1.2 0";
    private const string DirectIn = "M0.7 1H2.9M0.7 1.5H1.3M1.5 1.5H2.1M2.3 1.5H2.9";
    private const string DirectOut = "M3.1 2.5H5.3M3.1 3H3.7M3.9 3H4.5M4.7 3H5.3";

    // Male contacts, to which a plug comes.
    private const string Pins = "M0 1H2.2M0 2.6H2.2M2.2 0.6H4.6V1.4H2.2ZM2.2 2.2H4.6V3H2.2Z";

    /// <summary>The mark of a part; empty when it has none.</summary>
    public static string Of(PartType type) =>
        type.Circuit.OfType<Source>().FirstOrDefault(source => source.Feed is not null) is { } source && type.ClassLetter == "T"
            ? Square + (type.FindTerminal(source.Feed!.A)?.Role == TerminalRole.Line ? AlternatingIn : DirectIn) + DirectOut
        : type.Connectors.Any(connector => connector is { Pluggable: true } && Brings(type, connector)) && type.ClassLetter == "X" ? Pins
        : "";

    // Mains, or the output of a supply that stands outside, comes by a plug to an inlet.
    private static bool Brings(PartType type, Connector connector) =>
        connector.Terminals.Any(name => type.FindTerminal(name)!.Role is TerminalRole.Line or TerminalRole.Positive);
}
