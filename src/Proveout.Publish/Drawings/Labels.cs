using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Words of a drawing that may not cover each other: one that finds no free place is left out, or comes where it is asked for first.</summary>
internal sealed class Labels
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> _taken = [];
    private readonly List<XElement> _drawn = [];

    public IEnumerable<XElement> Drawn => _drawn;

    /// <summary>Writes a text centred at the first of the places where it covers no other.</summary>
    /// <returns>True when there was one.</returns>
    public bool Write(string text, TextStyle style, IEnumerable<(double X, double Y)> places, bool isUpright = false, bool hasGround = false)
    {
        var (along, across) = (style.Width(PlainText.Clean(text)) + 0.8, style.Size * 1.15);
        var (width, height) = isUpright ? (across, along) : (along, across);
        foreach (var (x, y) in places)
        {
            var box = (x - (width / 2), y - (height / 2), x + (width / 2), y + (height / 2));
            if (_taken.Exists(other => other.Left < box.Item3 && box.Item1 < other.Right && other.Top < box.Item4 && box.Item2 < other.Bottom))
                continue;
            _taken.Add(box);
            if (hasGround)
                _drawn.Add(Shape.Box(x - (width / 2), y - (height / 2) - 0.2, width, height + 0.4, 0.4, Paper.Ground, "none", 0));
            _drawn.Add(Word(text, x, y, style with { Anchor = "middle" }, isUpright));
            return true;
        }

        return false;
    }

    private static XElement Word(string text, double x, double y, TextStyle style, bool isUpright)
    {
        var down = y + (style.Size * 0.35);
        if (!isUpright)
            return Shape.Text(text, x, down, style, 400);
        var word = Shape.Text(text, x + (style.Size * 0.35), y, style, 400);
        word.SetAttributeValue("transform", FormattableString.Invariant($"rotate(-90 {x + (style.Size * 0.35):0.##} {y:0.##})"));
        return word;
    }
}
