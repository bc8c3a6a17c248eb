using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A measurement sheet at the terminal.</summary>
internal static class SheetText
{
    /// <summary>Shows a sheet, the names of files that were written, and where it was kept.</summary>
    public static int Show(Terminal terminal, string format, SheetView view, bool asJson, IReadOnlyList<string> files, Kept kept)
    {
        if (asJson)
            terminal.Show(MeasurementShape.Of(format, view, files, kept.Entry), JsonShapes.Spread.MeasurementShape);
        else
            ShowWords(terminal, view);
        foreach (var file in asJson ? [] : files)
            terminal.Say($"Drawn in {file}");
        if (!asJson)
            kept.Say(terminal);
        return view.IsFine ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void ShowWords(Terminal terminal, SheetView view)
    {
        if (view.Figures.Count > 0)
        {
            var sheet = new Sheet("Figure", "Value");
            foreach (var figure in view.ToSet)
                sheet.Add($"To set: {figure.Name}", figure.Figure.Words);
            foreach (var figure in view.Figures)
                sheet.Add(figure.Name, figure.Figure.Words);
            terminal.Show(sheet);
        }

        foreach (var finding in view.Findings)
            terminal.Say(finding, view.IsFine ? Meaning.Good : Meaning.Bad);
        foreach (var (number, step) in view.Steps.Index())
            terminal.Say($"{number + 1}. {step}");
        foreach (var remark in view.Remarks)
            terminal.Say(remark);
        if (view.Seen is { } seen)
            SeenText.Show(terminal, seen);
    }
}
