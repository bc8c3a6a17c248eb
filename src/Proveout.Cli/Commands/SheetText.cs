using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A measurement sheet at the terminal.</summary>
internal static class SheetText
{
    public static int Show(Terminal terminal, string format, SheetView view, bool asJson)
    {
        if (asJson)
            terminal.Show(MeasurementShape.Of(format, view), JsonShapes.Spread.MeasurementShape);
        else
            ShowWords(terminal, view);
        return view.IsFine ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void ShowWords(Terminal terminal, SheetView view)
    {
        var sheet = new Sheet("Figure", "Value");
        foreach (var figure in view.Figures)
            sheet.Add(figure.Name, figure.Figure.Words);
        terminal.Show(sheet);
        foreach (var finding in view.Findings)
            terminal.Say(finding, view.IsFine ? Meaning.Good : Meaning.Bad);
        foreach (var (number, step) in view.Steps.Index())
            terminal.Say($"{number + 1}. {step}");
        foreach (var remark in view.Remarks)
            terminal.Say(remark);
    }
}
