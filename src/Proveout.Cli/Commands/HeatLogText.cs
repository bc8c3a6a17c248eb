using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What a log of a heater says, at the terminal.</summary>
internal static class HeatLogText
{
    public static int Show(Terminal terminal, HeatLogView view, bool asJson)
    {
        if (asJson)
            terminal.Show(HeatLogShape.Of(view), JsonShapes.Spread.HeatLogShape);
        else
            ShowWords(terminal, view);
        return view.Sheet.IsFine ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void ShowWords(Terminal terminal, HeatLogView view)
    {
        foreach (var sentence in view.What)
            terminal.Say(sentence);
        terminal.Say();
        foreach (var finding in view.Sheet.Findings)
            terminal.Say(finding, view.Sheet.IsFine ? Meaning.Good : Meaning.Bad);
        if (view.Diagnosis is { Failed.Count: > 0 } diagnosis)
        {
            terminal.Warn("Switch off and isolate before a hand goes to heater or sensor.");
            DiagnosisText.Show(terminal, diagnosis);
        }

        foreach (var (number, step) in view.Sheet.Steps.Index())
            terminal.Say($"{number + 1}. {step}");
        ShowFigures(terminal, view);
        ShowSettings(terminal, view);
        terminal.Say();
        foreach (var remark in view.Sheet.Remarks)
            terminal.Say(remark);
    }

    private static void ShowFigures(Terminal terminal, HeatLogView view)
    {
        if (view.Sheet.Figures.Count > 0)
        {
            var sheet = new Sheet("Figure", "Value");
            foreach (var figure in view.Sheet.Figures)
                sheet.Add(figure.Name, figure.Figure.Words);
            terminal.Show(sheet);
        }

        if (view.Compared.Count == 0)
            return;
        var compared = new Sheet("Figure", "Before", "Now", "Difference", "Beyond noise");
        foreach (var figure in view.Compared)
            compared.Add(figure.Name, figure.Before.Words, figure.After.Words, figure.Difference.Words, figure.IsBeyondNoise ? "yes" : "no");
        terminal.Show(compared);
    }

    private static void ShowSettings(Terminal terminal, HeatLogView view)
    {
        foreach (var settings in view.Settings)
        {
            terminal.Say();
            terminal.Say($"Settings, {settings.Rule}:");
            foreach (var sentence in HeatLogWords.Settings(settings))
                terminal.Say(sentence);
        }

        if (view.Guard is not { } guard)
            return;
        terminal.Say();
        foreach (var sentence in HeatWords.Guard(guard))
            terminal.Say(sentence);
    }
}
