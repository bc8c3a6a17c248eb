using System.CommandLine;
using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout review MACHINE</c>.</summary>
internal static class ReviewCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "review",
            "Review a design on paper before anything is built. It finds what it looks for; it never says that a machine is safe.",
            "proveout review samples/alderbrook")
        {
            options.Machine, options.Json,
        };
        MachineRun.Of(command, terminal, options, run => Task.FromResult(Show(run, DesignReview.Of(run.Machine.Design))));
        return command;
    }

    private static int Show(MachineRun run, IReadOnlyList<Finding> findings) => run.Show(
        () => new ReviewShape("proveout-review 1", MachineShape.Of(run.Machine), [.. findings.Select(FindingShape.Of)]),
        JsonShapes.Spread.ReviewShape,
        () => ShowWords(run.Terminal, run.Machine, findings),
        findings.Any(finding => finding.Severity >= FindingSeverity.Warning) ? ExitCode.Findings : ExitCode.Fine);

    private static void ShowWords(Terminal terminal, LoadedMachine machine, IReadOnlyList<Finding> findings)
    {
        foreach (var finding in findings)
        {
            terminal.Say($"{WordOf(finding.Severity)}: {finding.Sentence}", finding.Severity == FindingSeverity.Error ? Meaning.Bad : Meaning.Plain);
            terminal.Say($"  {finding.Fix}");
            terminal.Say($"  {finding.Rule}; {finding.Source}");
        }

        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{machine.Design.Name}: {Of(FindingSeverity.Error, "error")}, {Of(FindingSeverity.Warning, "warning")}, {Of(FindingSeverity.Note, "note")}, {Count(findings, FindingSeverity.NotKnown)} not known, by {ReviewRules.All.Count} rules. What no rule looks for is not found."));

        string Of(FindingSeverity severity, string one) => Count(findings, severity) is var count && count == 1 ? $"1 {one}" : FormattableString.Invariant($"{count} {one}s");
    }

    private static int Count(IReadOnlyList<Finding> findings, FindingSeverity severity) => findings.Count(finding => finding.Severity == severity);

    private static string WordOf(FindingSeverity severity) => severity switch
    {
        FindingSeverity.Error => "ERROR",
        FindingSeverity.Warning => "Warning",
        FindingSeverity.Note => "Note",
        _ => "Not known",
    };
}
