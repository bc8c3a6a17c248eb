using System.CommandLine;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout ask MACHINE</c>: from what is seen to suspects, without a reading.</summary>
internal static class AskCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var bad = new Option<string[]?>("--bad") { Description = "A symptom that is not as it should be; may be given several times.", HelpName = "ID" };
        var good = new Option<string[]?>("--good") { Description = "One that is as it should be; may be given several times.", HelpName = "ID" };
        var command = new ExampleCommand(
            "ask",
            "Rank the mistakes that explain what you see, hear or feel, and name the check worth most; without symptoms, list those that can be asked.",
            "proveout ask samples/pennywort",
            "proveout ask samples/alderbrook --json")
        {
            options.Machine, bad, good, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            var planned = await run.PlanAsync(onlyGreedy: true);
            var live = await run.WaitAsync($"Running {run.Machine.Design.Name} sound and with every mistake", () => planned.WithLiveChecks(run.Cancellation));
            var answers = Answers(run.Parse.GetValue(bad), run.Parse.GetValue(good));
            if (Unknown(live, answers.Keys) is { Length: > 0 } problems)
                return terminal.Refuse(problems, run.AsJson);
            var view = Asking.Of(live, answers);
            return run.Show(
                () => AnswerShape.Of(view), JsonShapes.Spread.AnswerShape, () => Show(terminal, view), view.IsAsked ? ExitCode.Findings : ExitCode.Fine);
        });
        return command;
    }

    private static Dictionary<string, bool> Answers(string[]? bad, string[]? good)
    {
        var answers = (good ?? []).ToHashSet(StringComparer.Ordinal).ToDictionary(id => id, _ => false, StringComparer.Ordinal);
        foreach (var id in bad ?? [])
            answers[id] = true;
        return answers;
    }

    private static Diagnostic[] Unknown(PlannedMachine live, IEnumerable<string> ids) =>
    [
        .. from id in ids
           where live.Dictionary.IndexOfCheck(id) is not { } index || !Symptom.Is(live.Dictionary.Checks[index])
           select new Diagnostic(
               "no-such-symptom", new SourcePlace(live.Machine.Path, 0, 0), $"{live.Machine.Design.Name} has no symptom `{id}`.", "`proveout ask MACHINE` lists them."),
    ];

    private static void Show(Terminal terminal, AskView view)
    {
        if (!view.IsAsked)
        {
            List(terminal, view);
            return;
        }

        DiagnosisText.ShowSuspects(terminal, view.Suspects);
        DiagnosisText.ShowUnknown(terminal, view.Unknown);
        terminal.Warn(view.NextSetUp?.Cautions ?? []);
        if (view.Next is { } next)
            DiagnosisText.ShowNext(terminal, next);
    }

    private static void List(Terminal terminal, AskView view)
    {
        terminal.Warn(view.Groups.SelectMany(group => group.SetUp.Cautions).Distinct());
        var sheet = new Sheet("When", "What should be", "Symptom");
        foreach (var group in view.Groups)
            foreach (var symptom in group.Symptoms)
                sheet.Add(group.SetUp.Title, symptom.Check.Title, symptom.Check.Id);
        terminal.Show(sheet);
        terminal.Say("Say what is not so: `proveout ask MACHINE --bad SYMPTOM`.");
    }
}
