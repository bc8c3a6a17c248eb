using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Schedules;

/// <summary>The label of one end of a conductor.</summary>
/// <param name="Conductor">Identifier of the conductor.</param>
/// <param name="Here">Terminal that this end lands on.</param>
/// <param name="There">Terminal that the other end lands on.</param>
/// <param name="Wire">Section and colour.</param>
/// <param name="Code">What its square code says: the address of the wire's page, or the label's own words.</param>
public sealed record WireLabel(string Conductor, string Here, string There, string Wire, string Code)
{
    /// <summary>Both labels of every conductor, in the order of the wire list.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="pages">Address of the machine's pages, such as <c>http://192.168.1.20:5080/machines/alderbrook</c>; empty when there are none to point at.</param>
    public static IReadOnlyList<WireLabel> AllOf(MachineDesign design, string pages) =>
        [.. design.Conductors.SelectMany(conductor => new[] { Of(conductor, conductor.From, conductor.To, pages), Of(conductor, conductor.To, conductor.From, pages) })];

    private static WireLabel Of(Conductor conductor, TerminalReference here, TerminalReference there, string pages) => new(
        conductor.Id,
        here.ToString(),
        there.ToString(),
        string.Create(CultureInfo.InvariantCulture, $"{conductor.CrossSection.SquareMillimeters:0.###} mm² {ColourWords.Of(conductor.Colour)}"),
        pages.Length > 0
            ? $"{pages.TrimEnd('/')}/wires/{Uri.EscapeDataString(conductor.Id)}"
            : $"{conductor.Id} {conductor.From} - {conductor.To}");
}
