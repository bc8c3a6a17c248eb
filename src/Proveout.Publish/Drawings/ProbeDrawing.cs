using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Draws where the two leads of a meter go for a check, for a phone beside the machine.</summary>
public static class ProbeDrawing
{
    private const double Margin = 8;
    private const double Space = 18;
    private const double LeastHeight = 140;

    /// <summary>The drawing as an SVG document without a declaration, so that it can stand in a page or in a file of its own.</summary>
    /// <remarks>
    /// Lines and words take the colour of the text around them; the custom properties <c>--drawing-red</c> and <c>--drawing-black</c> replace the
    /// leads' own colours. Both carry white words, so keep 4.5 : 1 against white (WCAG 2.2, 1.4.3).
    /// </remarks>
    /// <exception cref="ArgumentException">The check has more than two points: a meter has two leads.</exception>
    public static string Svg(MachineDesign design, Check check)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(check);
        if (check.Points.Count > 2)
            throw new ArgumentException($"Check {check.Id} has {check.Points.Count} points; a meter has two leads.", nameof(check));
        var things = ThingReader.Read(design, check);
        var (content, height) = things.Count == 0 ? WithoutLeads(check) : WithLeads(things);
        return Frame(check, Description(things), content, height).ToString(SaveOptions.DisableFormatting);
    }

    private static (IReadOnlyList<XElement> Content, double Height) WithLeads(IReadOnlyList<Thing> things)
    {
        var content = new List<XElement>();
        var top = Margin;
        foreach (var thing in things)
        {
            var layout = new ThingLayout(thing, top);
            content.AddRange(new ThingPainter(thing, layout).Draw());
            content.AddRange(new LeadPainter(thing, layout).Draw());
            top = layout.Bottom + Space;
        }

        return (content, Math.Max(LeastHeight, top - Space + Margin));
    }

    private static (IReadOnlyList<XElement> Content, double Height) WithoutLeads(Check check) =>
    (
        [
            Shape.Box(8, 8, 344, 124, 6, "none", Shape.Ink, 1.5),
            Shape.Text(check.Title, 180, 66, new TextStyle(15, "middle", Bold: true), 320),
            Shape.Text("No leads needed", 180, 92, new TextStyle(13, "middle"), 320),
        ],
        LeastHeight);

    private static XElement Frame(Check check, string description, IReadOnlyList<XElement> content, double height)
    {
        var id = Identifier(check.Id);
        var frame = Shape.Element(
            "svg",
            ("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {ThingLayout.Width} {height:0.##}")),
            ("width", ThingLayout.Width), ("height", height), ("role", "img"), ("aria-labelledby", $"{id}-title {id}-desc"),
            ("font-family", "system-ui, sans-serif"));
        var title = Shape.Title(check.Title);
        title.SetAttributeValue("id", $"{id}-title");
        var text = Shape.Element("desc", ("id", $"{id}-desc"));
        text.Add(PlainText.Clean(description));
        frame.Add(title, text, content);
        return frame;
    }

    private static string Description(IReadOnlyList<Thing> things) =>
        things.Count == 0 ? "No leads needed." : string.Join(" ", things.SelectMany(Sentences));

    private static IEnumerable<string> Sentences(Thing thing)
    {
        foreach (var touch in thing.Touches)
        {
            var half = touch.Side switch
            {
                "" => "",
                ThingReader.Plug => ", on the plug, which is pulled off",
                ThingReader.Pins => ", on the pins, with the plug pulled off",
                _ => $", on the side {touch.Side}",
            };
            yield return $"{touch.Lead} lead on {thing.Contacts[touch.Contact].Name} of {thing.Label}{half}.";
        }

        yield return $"In order: {string.Join(", ", thing.Contacts.Select(contact => contact.Name))}.";
    }

    /// <summary>Unique among the checks of a machine, and fit for an attribute whatever the check is called.</summary>
    private static string Identifier(string checkId) =>
        "probe-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(checkId)))[..12];
}
