namespace Proveout.Publish.Drawings;

/// <summary>One sheet of a drawing.</summary>
/// <param name="Name">Short name of small letters, digits and hyphens, unique within its drawing; fit for a file.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Svg">The sheet as an SVG document without a declaration, in millimetres, as wide as A4 landscape.</param>
public sealed record DrawingSheet(string Name, string Title, string Svg)
{
    /// <summary>How high the sheet is, in millimetres; that of A4 landscape at most.</summary>
    public double HeightMm { get; init; } = Paper.Height;
}
