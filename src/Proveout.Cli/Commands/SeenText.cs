using Proveout.Engine.Motion;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What is seen, and what explains it, at the terminal.</summary>
internal static class SeenText
{
    public static void Show(Terminal terminal, SeenView view)
    {
        terminal.Say();
        foreach (var words in view.Reported)
            terminal.Say($"You say: {words}.");
        if (view.Suspects.Count == 0)
        {
            terminal.Say("Nothing of this is off.", Meaning.Good);
            return;
        }

        DiagnosisText.ShowSuspects(terminal, view.Suspects);
        DiagnosisText.ShowUnknown(terminal, view.Unknown);
        terminal.Warn(view.NextSetUp?.Cautions ?? []);
        if (view.Next is { } next)
        {
            DiagnosisText.ShowNext(terminal, next);
            terminal.Say($"Say what it reads with --reads \"{next.Id}=VALUE\".");
        }
    }

    public static void List(Terminal terminal, IReadOnlyList<SeenQuestion> questions)
    {
        terminal.Say();
        terminal.Say("What you see can be said with --sees, in these words or in as many of them as say it:");
        foreach (var question in questions)
            terminal.Say($"  {question.Question} {string.Join("; ", question.Outcomes.Select(outcome => outcome.Words))}.");
    }
}
