using System.CommandLine;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Writes drawings of measurements where a command was told to.</summary>
internal static class DrawingFiles
{
    public static Option<string?> Option(string description) => new("--drawing") { Description = description, HelpName = "FILE" };

    /// <summary>The files written, the first under the name given and the others beside it; none when no name was given.</summary>
    public static Outcome<IReadOnlyList<string>> Write(string? path, IReadOnlyList<SheetDrawing> drawings)
    {
        if (path is null)
            return Outcome.Of<IReadOnlyList<string>>([]);
        if (drawings.Count == 0)
            return Outcome.Refused<IReadOnlyList<string>>([new Diagnostic("nothing-to-draw", new SourcePlace("--drawing", 0, 0), "There is nothing to draw.", "Give what was measured along or over a place, such as a table of heights.")]);
        string[] files = [.. drawings.Select((drawing, index) => index == 0 ? path : Beside(path, drawing.Name))];
        var problems = drawings.Zip(files, (drawing, file) => SafeFile.TryWrite(file, stream => stream.Write(Encoding.UTF8.GetBytes(drawing.Paper)))).OfType<Diagnostic>().ToArray();
        return problems.Length > 0 ? Outcome.Refused<IReadOnlyList<string>>(problems) : Outcome.Of<IReadOnlyList<string>>(files);
    }

    private static string Beside(string path, string name) =>
        Path.Combine(Path.GetDirectoryName(path) ?? "", $"{Path.GetFileNameWithoutExtension(path)}-{name}{Path.GetExtension(path)}");
}
