using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>How each conductor of a machine ends.</summary>
public static class Terminations
{
    // Torque of an M4 screw or stud for a bonding lug.
    private const double LugTorqueNewtonMetres = 1.2;

    /// <summary>The termination of a conductor at one of its ends.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="conductor">One of its conductors.</param>
    /// <param name="end">The terminal of that end.</param>
    public static Termination At(MachineDesign design, Conductor conductor, TerminalReference end)
    {
        var type = design.FindPart(end.Part)!.Type;
        var connector = type.ConnectorOf(end.Terminal);
        var (kind, strip, torque) = connector is not null ? ConnectorFamilies.Of(connector.Family)
            : type.ExposedConductivePart ? (TerminationKind.RingLug, 7, LugTorqueNewtonMetres)
            : (TerminationKind.Unknown, null, null);
        // What the machine file says of this end goes before what the connector usually asks for.
        return (conductor.From == end ? conductor.Make.FromEnd : conductor.Make.ToEnd) is { } said && KindOf(said) != kind
            ? new(KindOf(said), $"{SaidWords(said)}, {SectionOf(conductor)}, as the machine file says", strip, torque)
            : new(kind, WordsOf(kind, conductor, connector), strip, torque);
    }

    private static TerminationKind KindOf(EndKind said) => said switch
    {
        EndKind.Ferrule or EndKind.TwinFerrule => TerminationKind.Ferrule,
        EndKind.Crimp => TerminationKind.CrimpContact,
        EndKind.Lug or EndKind.LugOnPaint => TerminationKind.RingLug,
        EndKind.Receptacle => TerminationKind.Receptacle,
        EndKind.Solder => TerminationKind.Solder,
        _ => TerminationKind.Stripped,
    };

    private static string SaidWords(EndKind said) => said switch
    {
        EndKind.Ferrule => "ferrule",
        EndKind.TwinFerrule => "twin ferrule",
        EndKind.Crimp => "crimp contact",
        EndKind.Lug or EndKind.LugOnPaint => "lug",
        EndKind.Receptacle => "receptacle",
        EndKind.Solder => "soldered",
        EndKind.Tinned => "tinned",
        _ => "stripped",
    };

    private static string SectionOf(Conductor conductor) => Measure.Area.Format(conductor.CrossSection.SquareMillimeters, 3, Rounding.Nearest);

    private static string WordsOf(TerminationKind kind, Conductor conductor, Connector? connector)
    {
        var section = SectionOf(conductor);
        return kind switch
        {
            TerminationKind.Stripped => "stripped, no ferrule",
            TerminationKind.Ferrule => $"ferrule {section}",
            TerminationKind.RingLug => $"ring lug M4, {section}",
            TerminationKind.Receptacle => $"receptacle {WidthOf(connector!)}, {section}, insulated",
            TerminationKind.CrimpContact => $"crimp contact {connector!.Family}, {section}",
            TerminationKind.RibbonContact => $"ribbon contact {connector!.Family}",
            TerminationKind.Solder => "soldered",
            TerminationKind.ReadyMade => "ready-made",
            _ => "as the part's instructions say",
        };
    }

    private static string WidthOf(Connector connector) =>
        connector.Family.Split('-') is [_, var width] && double.TryParse(width, NumberStyles.Float, CultureInfo.InvariantCulture, out var millimetres)
            ? string.Create(CultureInfo.InvariantCulture, $"{millimetres} mm")
            : connector.Family;
}
