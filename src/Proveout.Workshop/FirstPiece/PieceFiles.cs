using System.Globalization;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using Proveout.Publish.Drawings;
using Proveout.Publish.Solids;

namespace Proveout.Workshop;

/// <summary>The files of a test piece: bodies in STL and 3MF, the drawing, and the form for readings.</summary>
public static class PieceFiles
{
    // The drawing is made for a ring of this size, so that its numbers keep theirs.
    private const double DrawnRing = 100;

    /// <summary>The files; or everything that is wrong.</summary>
    /// <param name="typed">Figures by the names of <see cref="PieceFields.Shape"/>, and how it is made by <see cref="PieceWays.Name"/>.</param>
    public static Outcome<PieceFilesView> Of(IReadOnlyDictionary<string, string> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        List<Diagnostic> problems = [];
        if (PieceShaping.Of(typed, problems) is not { } piece)
            return Outcome.Refused<PieceFilesView>(problems);
        Solid[] solids = [.. piece.Parts.Select(part => new Solid(part.Name, [.. part.Mesh.Corners.Select(corner => (corner.X, corner.Y, corner.Z))], part.Mesh.Triangles))];
        var title = string.Create(CultureInfo.InvariantCulture, $"First test piece, double ring {piece.Size.RingMm:0} mm, {PieceWays.All[(int)piece.Size.Making].Name}");
        var room = piece.Size.Room;
        return Outcome.Of(new PieceFilesView(
            title,
            string.Create(CultureInfo.InvariantCulture, $"It takes {room.X:0} × {room.Y:0} × {room.Z:0} mm and {piece.Parts.Sum(part => part.Mesh.CubicMillimetres) / 1000:0.0} cm³ of material when solid."),
            string.Create(CultureInfo.InvariantCulture, $"{piece.Size.RingMm:0.##}"),
            [.. piece.Parts.Select(part => new PiecePartView(part.Name, part.Purpose))],
            [.. from part in piece.Parts
                from measure in part.Measures
                select new PieceMeasureView(measure.Number, part.Name, measure.Words, measure.Grip == PieceGrip.Inside, measure.NominalMm, PieceFields.Measure(measure))],
            StlFile.Binary(title, solids),
            StlFile.Text(solids),
            ThreeMfFile.Of(title, "Made to be measured: size, squareness, growth of walls, heights, flow, overhang. One bore marks the side towards +X, two the side towards +Y.", solids),
            Drawing(piece, title),
            Form(piece)));
    }

    private static string Drawing(TestPiece piece, string title)
    {
        var scale = DrawnRing / piece.Size.RingMm;
        DrawnShape[] shapes = [.. piece.Parts.Select(part => Drawn(part, scale))];
        var rows = shapes.Index().GroupBy(shape => (shape.Index + 1) / 2).Select(row => (IReadOnlyList<DrawnShape>)[.. row.Select(shape => shape.Item)]);
        return PieceDrawing.Of(
            title, $"{string.Join("; ", piece.Parts.Select(part => $"{part.Name}: {part.Purpose}"))}. Numbered arrows show what is measured; the numbers are listed with words beside the drawing.", [.. rows]);
    }

    private static DrawnShape Drawn(PiecePart part, double scale)
    {
        (double, double) Scaled((double Across, double Up) point) => (scale * point.Across, scale * point.Up);
        return new(
            part.Name,
            part.View,
            [.. part.Shape.Lines.Select(line => (IReadOnlyList<(double, double)>)[.. line.Points.Select(Scaled)])],
            [.. part.Measures.Select(measure => new DrawnMeasure(measure.Number, measure.Grip == PieceGrip.Inside, Scaled(measure.From), Scaled(measure.To), measure.Words))]);
    }

    private static string Form(TestPiece piece)
    {
        var form = new StringBuilder("# A line for each reading; write a measure again below to read it several times; leave the reading empty when it was not taken.\n");
        form.Append("measure; drawn [mm]; reading [mm]\n");
        foreach (var measure in piece.Measures)
            form.Append(CultureInfo.InvariantCulture, $"# {measure.Words}\n{measure.Number}; {measure.NominalMm:0.###};\n");
        return form.ToString();
    }
}
