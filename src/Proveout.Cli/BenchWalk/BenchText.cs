using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What the walk shows.</summary>
/// <param name="terminal">Where it shows it.</param>
internal sealed class BenchText(Terminal terminal)
{
    private string _setUp = "";

    public void Welcome(BenchState state)
    {
        var done = state.Steps.Count(step => step.Status != StepStatus.Open);
        terminal.Say($"Build {state.Build.Serial} of {state.Build.MachineName}, by {state.Build.Builder}: {Number(done)} of {Number(state.Steps.Count)} checks done.");
    }

    /// <summary>A check; where its set-up is a new one, the cautions stand first.</summary>
    public void Step(BenchState state, BenchStep step)
    {
        if (_setUp != step.SetUp.Id)
            SetUp(step);
        _setUp = step.SetUp.Id;
        terminal.Say();
        terminal.Say($"Check {Number(step.Number)} of {Number(state.Steps.Count)}: {step.Check.Title}");
        terminal.Say($"  {(step.ChangesMeter ? "Set the meter anew" : "Meter")}: {step.MeterSetting}");
        terminal.Say($"  {step.Check.Instruction}");
        if (step.Leads.Length > 0)
            terminal.Say($"  {step.Leads}");
        terminal.Say($"  Should read: {step.Expected}. {step.Check.Why}");
        terminal.Say($"  {step.CatchesShort}");
        if (step.ReadingText.Length > 0)
            terminal.Say($"  It read {step.ReadingShown} ({Word(step.Status)}); a new reading corrects it.");
    }

    public void Help(BenchStep step)
    {
        terminal.Say(ReadingText.HelpFor(step.Check.Unit));
        terminal.Say("Or: skip REASON, note TEXT, back, next (the check worth most when something is off), list, quit.");
    }

    public void List(BenchState state)
    {
        var sheet = new Sheet("No.", "Check", "Should read", "Read", "Verdict");
        foreach (var step in state.Steps)
            sheet.Add(Number(step.Number), step.Check.Title, step.Expected, step.ReadingShown, step.Reason.Length > 0 ? $"{Word(step.Status)}: {step.Reason}" : Word(step.Status));
        terminal.Show(sheet);
    }

    /// <summary>The verdict in words; after a fail, what may be wrong and what to measure next.</summary>
    public void Verdict(BenchState state, BenchStep step)
    {
        if (step.Status != StepStatus.Failed)
        {
            terminal.Say($"  {Word(step.Status).ToUpperInvariant()}: {step.ReadingShown}.", step.Status == StepStatus.Passed ? Meaning.Good : Meaning.Plain);
            return;
        }

        terminal.Say($"  FAIL: {step.ReadingShown}, and it should read {step.Expected}.", Meaning.Bad);
        if (state.PlugHint.Length > 0 && state.LastReadCheckId == step.Check.Id)
            terminal.Say($"  {state.PlugHint}", Meaning.Caution);
        DiagnosisText.ShowSuspects(terminal, state.Suspects);
        if (state.NextBestCheckId is { } next && state.FindStep(next) is { } best)
        {
            DiagnosisText.ShowNext(terminal, best.Check);
            terminal.Say("`next` goes there now.");
        }
    }

    public void Farewell(BenchState state)
    {
        terminal.Say();
        terminal.Say($"{Count(state, StepStatus.Passed)} pass, {Count(state, StepStatus.Failed)} fail, {Count(state, StepStatus.CannotTell)} cannot tell, "
            + $"{Count(state, StepStatus.Skipped)} left out, {Count(state, StepStatus.Open)} to do. Everything is in the journal; `proveout bench {state.Build.Serial}` goes on.");
    }

    private void SetUp(BenchStep step)
    {
        terminal.Say();
        terminal.Warn(step.SetUp.Cautions);
        terminal.Say($"Set-up: {step.SetUp.Title}");
        foreach (var instruction in step.SetUp.Instructions)
            terminal.Say($"  {instruction}");
    }

    private static string Count(BenchState state, StepStatus status) => Number(state.Steps.Count(step => step.Status == status));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Word(StepStatus status) => status switch
    {
        StepStatus.Passed => "pass",
        StepStatus.Failed => "fail",
        StepStatus.CannotTell => "cannot tell",
        StepStatus.Skipped => "left out",
        _ => "to do",
    };
}
