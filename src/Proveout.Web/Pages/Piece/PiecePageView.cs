using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Piece;

/// <summary>What the page of the first test piece shows.</summary>
/// <param name="Measure">Form, builds and what was kept.</param>
/// <param name="Piece">The piece; null when its sizes were refused.</param>
/// <param name="Answer">What the readings say; null when nothing was asked yet or it was refused.</param>
/// <param name="Problems">Why the sizes were refused, a sentence each.</param>
public sealed record PiecePageView(MeasurePageView Measure, PieceFilesView? Piece, PieceAnswer? Answer, IReadOnlyList<string> Problems)
{
    /// <summary>Address of a file of the piece, its sizes with it.</summary>
    public string File(string name) =>
        $"{Hosting.Addresses.Piece}/{name}?{string.Join('&', PieceEndpoints.ShapeNames.Select(field => $"{field}={Uri.EscapeDataString(Measure.Text(field))}"))}";
}
