using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout verify</c>.</summary>
internal static class VerifyCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var wanted = new Argument<string?>("BUILD") { Description = "A build: its identifier, the start of it, or its serial number.", Arity = ArgumentArity.ZeroOrOne };
        var all = new Option<bool>("--all") { Description = "Every build of the journal, and the file itself." };
        var seals = new Option<string[]?>("--seal") { Description = "A seal that was kept elsewhere, as `proveout seal --to` writes it; may be given several times.", HelpName = "FILE" };
        var key = new Option<string?>("--key") { Description = "The public key that you trust; each seal's own when left out.", HelpName = "FILE" };
        var command = new ExampleCommand(
            "verify", "Recompute the chain of a record, hold its seals against it, and say what was changed since.", "proveout verify P-7 --seal p-7.seal.json", "proveout verify --all")
        {
            wanted, all, seals, key, options.Journal, options.Json,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(all) == result.GetValue(wanted) is not null)
                result.AddError("Give either a build or --all.");
            if (result.GetValue(all) && result.GetValue(seals) is { Length: > 0 })
                result.AddError("A seal is of one build: give that build instead of --all.");
        });
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var kept = KeptSeals.Read(parse.GetValue(seals) ?? [], parse.GetValue(key));
            if (kept.Value is null)
                return terminal.Refuse(kept.Diagnostics, asJson);
            var journal = options.JournalOf(parse);
            try
            {
                var opened = await Workplace.OpenExistingAsync(options.FilesOf(parse), [], journal, cancellation);
                if (opened.Value is null)
                    return terminal.Refuse(opened.Diagnostics, asJson);
                await using var workplace = opened.Value;
                return await RunAsync(terminal, workplace.Journal, parse.GetValue(wanted), kept.Value, asJson, cancellation);
            }
            catch (JournalDamagedException damage) when (!JournalPlace.IsDatabase(journal))
            {
                return await LocateAsync(terminal, journal, damage, asJson, cancellation);
            }
        });
        return command;
    }

    private static async Task<int> RunAsync(Terminal terminal, IJournal journal, string? wanted, KeptSeals kept, bool asJson, CancellationToken cancellation)
    {
        var verification = new BuildVerification(journal);
        if (wanted is null)
            return Show(terminal, await verification.OfAllAsync(kept.PublicKey, cancellation), await verification.OfStoreAsync(cancellation), asJson);
        var found = await new BuildSearch(journal).FindAsync(wanted, cancellation);
        return found.Value is { } build
            ? Show(terminal, [await verification.OfAsync(build, kept.Seals, kept.PublicKey, cancellation)], [], asJson)
            : terminal.Refuse(found.Diagnostics, asJson);
    }

    // The database cannot read it any more; its bytes still say which build and which entry are hit.
    private static async Task<int> LocateAsync(Terminal terminal, string journal, JournalDamagedException damage, bool asJson, CancellationToken cancellation)
    {
        terminal.Complain(damage.Message);
        var report = await new DamagedJournal(journal).SurveyAsync(cancellation);
        if (asJson)
            terminal.Show(RescueShape.Of(report, null), JsonShapes.Spread.RescueShape);
        else
            RescueCommand.ShowLost(terminal, report);
        return ExitCode.Findings;
    }

    private static int Show(Terminal terminal, IReadOnlyList<BuildVerdict> verdicts, IReadOnlyList<string> file, bool asJson)
    {
        if (asJson)
            terminal.Show(new VerificationShape("proveout-verification 1", [.. verdicts.Select(BuildVerdictShape.Of)], file), JsonShapes.Spread.VerificationShape);
        else
            foreach (var verdict in verdicts)
                Show(terminal, verdict);
        if (!asJson && file.Count > 0)
            terminal.Say($"What the records are kept in is damaged, though they may be whole: {string.Join("; ", file.Take(3))}. `proveout rescue` puts what is in a file into a sound one, `proveout copy-journal` what is in a database.", Meaning.Bad);
        return file.Count == 0 && verdicts.All(verdict => verdict.IsSound) ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void Show(Terminal terminal, BuildVerdict verdict)
    {
        terminal.Say($"{verdict.Build.Serial} ({verdict.Build.MachineName}): {verdict.Sentence}", verdict.IsWhole ? Meaning.Good : Meaning.Bad);
        foreach (var seal in verdict.Seals)
            terminal.Say($"  {seal.Sentence}", seal.Standing == SealStanding.Holds ? Meaning.Good : Meaning.Bad);
        foreach (var jump in verdict.ClockJumps)
            terminal.Say(FormattableString.Invariant(
                $"  Entry {jump.Sequence} claims {jump.Claimed.UtcDateTime:yyyy-MM-dd HH:mm} UTC, before {jump.Before.UtcDateTime:yyyy-MM-dd HH:mm} of the entry it follows: the clock was set back. The order is by number."));
    }

    /// <summary>Seals from elsewhere and the key they are trusted by.</summary>
    private sealed record KeptSeals(IReadOnlyList<Seal> Seals, string? PublicKey)
    {
        public static Outcome<KeptSeals> Read(IReadOnlyList<string> files, string? keyFile)
        {
            var problems = new List<Diagnostic>();
            var seals = files.Select(file => Read(file, SealText.Read, "There is no seal in the file.", "Give a file that `proveout seal --to` wrote.", problems)).ToList();
            var key = keyFile is null ? null : Read(keyFile, SealKey.PublicKeyOf, "There is no key over P-256 in the file.", "Give the .pub file that `proveout seal-key` made.", problems);
            return problems.Count > 0 ? Outcome.Refused<KeptSeals>(problems) : Outcome.Of(new KeptSeals([.. seals.OfType<Seal>()], key));
        }

        private static T? Read<T>(string file, Func<string, T?> parse, string wrong, string mend, List<Diagnostic> problems)
            where T : class
        {
            var read = TextFiles.Read(file);
            var value = read.Text is { } text ? parse(text.Text) : null;
            if (value is null)
                problems.Add(read.Problem ?? new Diagnostic("no-seal", new SourcePlace(file, 0, 0), wrong, mend));
            return value;
        }
    }
}
