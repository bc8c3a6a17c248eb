using System.CommandLine;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout piece</c>.</summary>
internal static class PieceCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var folder = new Option<string?>("--out") { Description = "Folder to write the piece to: STL, 3MF, the drawing, and a form for the readings.", HelpName = "FOLDER" };
        var text = new Option<bool>("--stl-text") { Description = "Write the STL as text instead of bytes." };
        var readings = new Option<string?>("--readings") { Description = "Readings of the numbered measures: a table with the columns measure and reading.", HelpName = "FILE" };
        var made = new Option<string?>($"--{PieceWays.Name}") { Description = $"How the piece is made: {string.Join(", ", PieceWays.All.Select(way => way.Name))}. printed when left out.", HelpName = "WAY" };
        var command = new ExampleCommand(
            "piece",
            "Draw a first test piece that fits the machine, and tell from calliper, rule and wall what to correct and what is only the noise of measuring. Let plate and nozzle cool before a hand goes near.",
            "proveout piece --travel-x 220 --travel-y 220 --travel-z 200 --out piece",
            "proveout piece --travel-x 220 --travel-y 220 --readings piece/first-piece.csv",
            "proveout piece --mark-before \"120 120.5 120\" --mark-after \"22.5 23 22\" --feed-steps 400")
        {
            folder, text, readings, made, options.Json,
        };
        var figures = new FigureOptions(PieceFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var file = TextFiles.Read(parse.GetValue(readings));
            if (file.Problem is { } unreadable)
                return terminal.Refuse([unreadable], asJson);
            PieceRequest request = new(new Dictionary<string, string>(figures.TypedIn(parse)) { [PieceWays.Name] = parse.GetValue(made) ?? "" }, file.Text);
            var piece = PieceFiles.Of(request.Typed);
            if (piece.Value is not { } view)
                return terminal.Refuse(piece.Diagnostics, asJson);
            var written = parse.GetValue(folder) is { } path ? Write(view, path, parse.GetValue(text)) : ([], []);
            return written.Problems.Count > 0 ? terminal.Refuse(written.Problems, asJson)
                : PieceSheet.IsAsked(request) ? await JudgeAsync(terminal, request, asJson, (sheet, data) => keeping.KeepAsync(parse, keep => Measurements.Of("piece", sheet, keep), request.Typed, data, cancellation))
                : Show(terminal, view, written.Files, asJson);
        });
        return command;
    }

    private static (IReadOnlyList<string> Files, IReadOnlyList<Diagnostic> Problems) Write(PieceFilesView piece, string folder, bool asText)
    {
        (string Name, ReadOnlyMemory<byte> Bytes)[] files =
        [
            (PieceFilesView.StlName, asText ? Encoding.UTF8.GetBytes(piece.StlText) : piece.Stl), (PieceFilesView.ThreeMfName, piece.ThreeMf), (PieceFilesView.SvgName, Encoding.UTF8.GetBytes(piece.Svg)), (PieceFilesView.FormName, Encoding.UTF8.GetBytes(piece.Form)),
        ];
        string[] paths = [.. files.Select(file => Path.Combine(folder, file.Name))];
        return (paths, [.. files.Zip(paths, (file, path) => SafeFile.TryWrite(path, stream => stream.Write(file.Bytes.Span))).OfType<Diagnostic>()]);
    }

    private static async Task<int> JudgeAsync(Terminal terminal, PieceRequest request, bool asJson, Func<SheetView, IReadOnlyList<MeasuredFile>, Task<Kept>> keepAsync)
    {
        var answer = PieceSheet.Of(request);
        if (answer.Value is not { } found)
            return terminal.Refuse(answer.Diagnostics, asJson);
        var kept = await keepAsync(found.Sheet, request.Readings is { } readings ? [Measurements.FileOf(readings)] : []);
        if (kept.Problems.Count > 0)
            return terminal.Refuse(kept.Problems, asJson);
        if (!asJson)
            return SheetText.Show(terminal, "proveout-piece 1", found.Sheet, asJson, [], kept);
        terminal.Show(PieceShape.Of(found, kept.Entry), JsonShapes.Spread.PieceShape);
        return found.Sheet.IsFine ? ExitCode.Fine : ExitCode.Findings;
    }

    private static int Show(Terminal terminal, PieceFilesView piece, IReadOnlyList<string> files, bool asJson)
    {
        if (asJson)
            terminal.Show(PieceFilesShape.Of(piece, files), JsonShapes.Spread.PieceFilesShape);
        else
            ShowWords(terminal, piece, files);
        return ExitCode.Fine;
    }

    private static void ShowWords(Terminal terminal, PieceFilesView piece, IReadOnlyList<string> files)
    {
        terminal.Say($"{piece.Title}. {piece.Room}");
        var sheet = new Sheet("Measure", "Drawn", "What");
        foreach (var measure in piece.Measures)
            sheet.Add($"{measure.Number}", measure.Field.Hint, measure.Words);
        terminal.Show(sheet);
        foreach (var file in files)
            terminal.Say(file);
    }
}
