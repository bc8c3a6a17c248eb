using System.Globalization;
using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>How conductors look: their colour inside an edge of the ink, so that white shows on paper and black on a dark page; green-yellow in two colours.</summary>
internal static class WirePaint
{
    /// <summary>Code of a colour, IEC 60757.</summary>
    public static string Code(ConductorColour colour) => colour switch
    {
        ConductorColour.Black => "BK",
        ConductorColour.Brown => "BN",
        ConductorColour.Red => "RD",
        ConductorColour.Orange => "OG",
        ConductorColour.Yellow => "YE",
        ConductorColour.Green => "GN",
        ConductorColour.Blue => "BU",
        ConductorColour.Violet => "VT",
        ConductorColour.Grey => "GY",
        ConductorColour.White => "WH",
        ConductorColour.Pink => "PK",
        ConductorColour.Turquoise => "TQ",
        _ => "GNYE",
    };

    /// <summary>Identifier, colour code and cross-section, as a drawing marks a conductor.</summary>
    public static string Mark(Conductor conductor) => string.Create(
        CultureInfo.InvariantCulture, $"{conductor.Id} {Code(conductor.Colour)} {conductor.CrossSection.SquareMillimeters:0.##}");

    /// <summary>A conductor along corners.</summary>
    public static IEnumerable<XElement> Along(IReadOnlyList<(double X, double Y)> corners, ConductorColour colour, double width, double edge = 0.11)
    {
        var data = Data(corners);
        yield return Stroke(data, Shape.Ink, width + (2 * edge));
        yield return Stroke(data, Paint(colour), width);
        if (colour == ConductorColour.GreenYellow)
        {
            var second = Stroke(data, "#f4d019", width);
            second.Add(new XAttribute("stroke-dasharray", FormattableString.Invariant($"{3 * width:0.##} {3 * width:0.##}")));
            yield return second;
        }
    }

    /// <summary>A path through corners.</summary>
    public static string Data(IReadOnlyList<(double X, double Y)> corners) =>
        "M" + string.Join(" L", corners.Select(corner => string.Create(CultureInfo.InvariantCulture, $"{corner.X:0.##} {corner.Y:0.##}")));

    private static XElement Stroke(string data, string colour, double width) => Shape.Path(data, "none", colour, width);

    private static string Paint(ConductorColour colour) => colour switch
    {
        ConductorColour.Black => "#1b1b1b",
        ConductorColour.Brown => "#7b4a22",
        ConductorColour.Red => "#d0202a",
        ConductorColour.Orange => "#f0861c",
        ConductorColour.Yellow => "#f4d019",
        ConductorColour.Green or ConductorColour.GreenYellow => "#2f9a48",
        ConductorColour.Blue => "#2268c4",
        ConductorColour.Violet => "#7d3fa8",
        ConductorColour.Grey => "#8d9299",
        ConductorColour.White => "#ffffff",
        ConductorColour.Pink => "#f09abf",
        _ => "#2fb5b0",
    };
}
