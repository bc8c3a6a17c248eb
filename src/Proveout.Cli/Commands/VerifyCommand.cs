using System.CommandLine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout verify</c>.</summary>
internal static class VerifyCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var wanted = new Argument<string?>("BUILD") { Description = "A build: its identifier, the start of it, or its serial number.", Arity = ArgumentArity.ZeroOrOne };
        var all = new Option<bool>("--all") { Description = "Every build of the journal." };
        var command = new ExampleCommand("verify", "Recompute the chain of a record, and say whether anything was changed since.", "proveout verify P-7", "proveout verify --all")
        {
            wanted, all, options.Journal, options.Json,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(all) == result.GetValue(wanted) is not null)
                result.AddError("Give either a build or --all.");
        });
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var opened = await Workplace.OpenExistingAsync(options.FilesOf(parse), [], options.JournalOf(parse), cancellation);
            if (opened.Value is null)
                return terminal.Refuse(opened.Diagnostics, asJson);
            await using var workplace = opened.Value;
            try
            {
                return await RunAsync(terminal, workplace.Journal, parse.GetValue(wanted), asJson, cancellation);
            }
            catch (JournalDamagedException damage)
            {
                terminal.Complain(damage.Message);
                return ExitCode.Findings;
            }
        });
        return command;
    }

    private static async Task<int> RunAsync(Terminal terminal, IJournal journal, string? wanted, bool asJson, CancellationToken cancellation)
    {
        var verification = new BuildVerification(journal);
        if (wanted is null)
            return Show(terminal, await verification.OfAllAsync(cancellation), asJson);
        var found = await new BuildSearch(journal).FindAsync(wanted, cancellation);
        return found.Value is { } build
            ? Show(terminal, [await verification.OfAsync(build, cancellation)], asJson)
            : terminal.Refuse(found.Diagnostics, asJson);
    }

    private static int Show(Terminal terminal, IReadOnlyList<BuildVerdict> verdicts, bool asJson)
    {
        if (asJson)
            terminal.Show(
                new VerificationShape(
                    "proveout-verification 1",
                    [.. verdicts.Select(verdict => new BuildVerdictShape(verdict.Build.Id.ToString(), verdict.Build.Serial, verdict.Build.MachineName, verdict.IsWhole, verdict.Sentence))]),
                JsonShapes.Spread.VerificationShape);
        else
            foreach (var verdict in verdicts)
                terminal.Say($"{verdict.Build.Serial} ({verdict.Build.MachineName}): {verdict.Sentence}", verdict.IsWhole ? Meaning.Good : Meaning.Bad);
        return verdicts.All(verdict => verdict.IsWhole) ? ExitCode.Fine : ExitCode.Findings;
    }
}
