using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>What moves the contacts of a switch, IEC 60617 (from memory): mushroom head of an emergency stop, push button, or a handle.</summary>
internal static class ActuatorMark
{
    private const double Stem = 2.3;

    /// <summary>The mark over a contact; none where no hand moves it.</summary>
    public static IEnumerable<XElement> Of(Part part, double x, double y)
    {
        if (part.Type.ClassLetter != "S" || part.Type.Controls.Count == 0)
            yield break;
        yield return Shape.Line(x, y - 1, x, y - Stem, Shape.Ink, 0.3);
        yield return part.Type.Name.StartsWith("Emergency stop", StringComparison.OrdinalIgnoreCase)
            ? Shape.Path(FormattableString.Invariant($"M{x - 1.4:0.##} {y - Stem:0.##}a1.4 1.1 0 0 1 2.8 0Z"), Shape.Ink, Shape.Ink, 0.2)
            : Shape.Path(Head(part.Type, x, y), "none", Shape.Ink, 0.3);
    }

    private static string Head(PartType type, double x, double y) => type.Controls[0].Name == "button"
        ? FormattableString.Invariant($"M{x - 1.1:0.##} {y - Stem + 0.6:0.##}V{y - Stem:0.##}h2.2v0.6")
        : FormattableString.Invariant($"M{x - 1.1:0.##} {y - Stem:0.##}h2.2");
}
