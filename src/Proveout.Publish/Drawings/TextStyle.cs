namespace Proveout.Publish.Drawings;

/// <summary>How a line of text in a drawing looks.</summary>
/// <param name="Size">Font size.</param>
/// <param name="Anchor">Which point of it is placed: <c>start</c>, <c>middle</c> or <c>end</c>.</param>
/// <param name="Bold">Heavy strokes.</param>
/// <param name="Colour">Colour.</param>
internal sealed record TextStyle(double Size, string Anchor = "start", bool Bold = false, string Colour = Shape.Ink)
{
    /// <summary>Width that a text takes at most.</summary>
    public double Width(string text) => TextFit.Width(text, Size, Bold);

    /// <summary>As much of a text as fits a width.</summary>
    public string Fit(string text, double width) => TextFit.Fit(text, width, Size, Bold);
}
