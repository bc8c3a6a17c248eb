using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Collects the readings of the numbered measures from fields and from a table.</summary>
internal static class PieceReadings
{
    /// <summary>Readings by number; several for a measure that was read several times.</summary>
    public static SortedDictionary<int, List<double>> Of(TestPiece piece, PieceRequest request, List<Diagnostic> problems)
    {
        SortedDictionary<int, List<double>> readings = [];
        foreach (var measure in piece.Measures)
            foreach (var value in TypedSeries.Read(request.Typed, PieceFields.Measure(measure), problems))
                Add(readings, measure.Number, value);
        if (request.Readings is { } table)
            ReadTable(piece, table, readings, problems);
        return readings;
    }

    private static void ReadTable(TestPiece piece, NamedText file, SortedDictionary<int, List<double>> readings, List<Diagnostic> problems)
    {
        var read = DelimitedText.Read(file.Text, file.Name);
        problems.AddRange(read.Diagnostics);
        if (read.Value is not { } table)
            return;
        var numbers = table.Wanted("", problems, "measure", "number", "no");
        var values = table.Wanted("mm", problems, "reading", "length", "value");
        var drawn = table.Find("drawn", "nominal")?.In("mm");
        if (numbers is null || values is null)
            return;
        foreach (var (row, number) in numbers.Index())
        {
            SourcePlace place = new(file.Name, table.Lines[row], 0);
            if (piece.Measures.FirstOrDefault(measure => measure.Number == number) is not { } measure)
                problems.Add(new("unknown-measure", place, string.Create(CultureInfo.InvariantCulture, $"The piece has no measure {number}."), $"Its measures are {piece.Measures[0].Number} to {piece.Measures[^1].Number}, as on the drawing."));
            else if (drawn is not null && Math.Abs(drawn[row] - measure.NominalMm) > 0.01)
                problems.Add(new("other-size", place, string.Create(CultureInfo.InvariantCulture, $"Measure {number} is drawn as {drawn[row]:0.###} mm here, and as {measure.NominalMm:0.###} mm in the piece that is judged."), "Give the size, the layer and the way of making of the piece that was made, as when it was drawn."));
            else if (double.IsFinite(values[row]))
                Add(readings, measure.Number, values[row]);
        }
    }

    private static void Add(SortedDictionary<int, List<double>> readings, int number, double value)
    {
        if (!readings.TryGetValue(number, out var list))
            readings[number] = list = [];
        list.Add(value);
    }
}
