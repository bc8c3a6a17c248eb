using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Keeps what a command found in the record of a build; shared by all commands that measure.</summary>
/// <param name="options">Options of every command.</param>
internal sealed class KeepOptions(SharedOptions options)
{
    private readonly Option<string?> _build = new("--keep") { Description = "Keep the result and its data files in the record of this build: its identifier, the start of it, or its serial number.", HelpName = "BUILD" };
    private readonly Option<string?> _title = new("--title") { Description = "With --keep: what was measured, in a few words.", HelpName = "WORDS" };
    private readonly Option<string?> _person = new("--person") { Description = "With --keep: who measured; the builder when left out.", HelpName = "NAME" };

    /// <summary>Gives a command the options.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[_build, _title, _person, options.Journal])
            command.Options.Add(option);
    }

    /// <summary>Keeps a result when asked to: the entry that it became, nothing when it was not asked for, or why it was refused.</summary>
    public async Task<Kept> KeepAsync(
        ParseResult parse, Func<KeepRequest, MeasurementRequest> result, IReadOnlyDictionary<string, string> typed, IReadOnlyList<MeasuredFile> files, CancellationToken cancellation)
    {
        if (parse.GetValue(_build) is not { } wanted)
            return new(null, "", []);
        var opened = await Workplace.OpenExistingAsync(options.FilesOf(parse), [], options.JournalOf(parse), cancellation);
        if (opened.Value is null)
            return new(null, "", opened.Diagnostics);
        await using var workplace = opened.Value;
        var found = await new BuildSearch(workplace.Journal).FindAsync(wanted, cancellation);
        if (found.Value is not { } build)
            return new(null, "", found.Diagnostics);
        // What was left empty is not in the record.
        var measured = typed.Where(pair => pair.Value.Length > 0).ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);
        var request = result(new KeepRequest(parse.GetValue(_title) ?? "", measured, files, parse.GetValue(_person) ?? build.Builder, Guid.NewGuid()));
        var kept = await new MeasuringDesk(workplace.Journal).KeepAsync(build.Id.ToString(), request, cancellation);
        return kept.Value is { } entry ? new(entry.Sequence, build.Serial, []) : new(null, "", kept.Diagnostics);
    }
}

/// <summary>What became of a result.</summary>
/// <param name="Entry">Number of the entry; null when nothing was kept.</param>
/// <param name="Serial">Serial number of the build.</param>
/// <param name="Problems">Why it was not kept; empty when it was, or when nobody asked.</param>
internal sealed record Kept(long? Entry, string Serial, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>Says where it was kept.</summary>
    public void Say(Terminal terminal)
    {
        if (Entry is { } entry)
            terminal.Say($"Kept in the record of {Serial} as entry {entry}.", Meaning.Good);
    }
}
