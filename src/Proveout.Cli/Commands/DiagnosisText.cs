using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Shows in words what readings say.</summary>
internal static class DiagnosisText
{
    private const int MostReasons = 2;

    public static void Show(Terminal terminal, DiagnosisView view)
    {
        if (view.Failed.Count == 0)
        {
            terminal.Say(string.Create(CultureInfo.InvariantCulture, $"None of the {view.Readings} readings is off."), Meaning.Good);
            return;
        }

        terminal.Say(string.Create(CultureInfo.InvariantCulture, $"{view.Failed.Count} of {view.Readings} readings are off."), Meaning.Bad);
        var sheet = new Sheet("Check", "Read", "Should read");
        foreach (var failed in view.Failed)
            sheet.Add(failed.Check.Title, failed.Shown, failed.Expected);
        terminal.Show(sheet);
        terminal.Say();
        ShowSuspects(terminal, view.Suspects);
        ShowUnknown(terminal, view.Unknown);
        if (view.Next is { } next)
            ShowNext(terminal, next);
    }

    /// <summary>The suspects, most likely first.</summary>
    public static void ShowSuspects(Terminal terminal, IReadOnlyList<Suspect> suspects)
    {
        terminal.Say(suspects.Count > 0
            ? "What explains the readings, most likely first"
            : "No mistake that Proveout knows explains every reading, nor do four together. Read the checks that are off again, a meter with its leads zeroed, then look at these places.");
        foreach (var suspect in suspects)
        {
            terminal.Say($"- {ShareWords.Of(suspect.Probability)}: {suspect.Sentence}");
            terminal.Say($"  {suspect.Consequence}");
            foreach (var reason in suspect.Why.Take(MostReasons))
                terminal.Say($"  Why: {reason}");
            if (suspect.RuledOutBy is { } ruling)
                terminal.Say($"  {ruling}");
        }
    }

    /// <summary>How likely it is that none of the known mistakes explains it.</summary>
    public static void ShowUnknown(Terminal terminal, double unknown)
    {
        if (unknown > 0)
            terminal.Say($"- {ShareWords.Of(unknown)}: something that Proveout does not know of.");
    }

    /// <summary>The check worth most now.</summary>
    public static void ShowNext(Terminal terminal, Check next) =>
        terminal.Say($"Worth most now: {next.Instruction} Sound, it reads {CheckWords.Expected(next)}. Set-up: {next.SetUp}. ({next.Id})");
}
