namespace Proveout.Publish.Drawings;

/// <summary>Keeps words of a drawing apart, and inside it.</summary>
/// <param name="width">Width of the drawing.</param>
/// <param name="height">Its height.</param>
internal sealed class LabelRoom(double width, double height)
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> _taken = [];

    /// <summary>Takes room for words; false, and nothing taken, where others stand already or the drawing ends.</summary>
    public bool TryTake(string words, double x, double y, TextStyle style)
    {
        var wide = style.Width(words);
        var left = x - (style.Anchor switch { "middle" => wide / 2, "end" => wide, _ => 0 });
        var box = (Left: left - 1, Top: y - (0.8 * style.Size), Right: left + wide + 1, Bottom: y + (0.25 * style.Size));
        if (box.Left < 0 || box.Top < 0 || box.Right > width || box.Bottom > height
            || _taken.Any(each => box.Left < each.Right && each.Left < box.Right && box.Top < each.Bottom && each.Top < box.Bottom))
            return false;
        _taken.Add(box);
        return true;
    }
}
