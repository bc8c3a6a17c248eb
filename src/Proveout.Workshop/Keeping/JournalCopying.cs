using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Copies every build of a journal into another, whatever the two are kept in, so that the work goes on there.</summary>
/// <param name="clock">The clock of the journals.</param>
public sealed class JournalCopying(TimeProvider clock)
{
    /// <summary>Copies; each build goes in whole or not at all, and its chain is recomputed on both sides.</summary>
    /// <param name="from">Path or address of the journal that is copied; it is only read.</param>
    /// <param name="to">Path or address of the other; it is made where there is none.</param>
    /// <param name="goesOn">Takes builds that are there already as the beginning of the same copy, and adds what they lack.</param>
    /// <param name="cancellation">Cancels between two builds.</param>
    /// <exception cref="JournalException">One of the journals cannot be read or written.</exception>
    public async Task<Outcome<IReadOnlyList<CopiedBuild>>> RunAsync(string from, string to, bool goesOn, CancellationToken cancellation)
    {
        if (!await JournalPlace.HasJournalAsync(from, cancellation))
            return Outcome.Refused<IReadOnlyList<CopiedBuild>>([Problem("no-journal", from, "There is no journal here.", "Give the journal that is to be copied with --from.")]);
        await using var source = await JournalPlace.OpenAsync(from, clock, cancellation);
        var builds = await source.ListBuildsAsync(cancellation);
        var broken = await BrokenAsync(source, from, builds, cancellation);
        if (broken.Count > 0)
            return Outcome.Refused<IReadOnlyList<CopiedBuild>>(broken);
        await using var target = await JournalPlace.OpenAsync(to, clock, cancellation);
        var inTheWay = InTheWay(to, builds, await target.ListBuildsAsync(cancellation), goesOn);
        if (inTheWay.Count > 0)
            return Outcome.Refused<IReadOnlyList<CopiedBuild>>(inTheWay);
        var copied = new List<CopiedBuild>();
        foreach (var build in builds)
            copied.Add(await CopyAsync(source, target, build, cancellation));
        for (var place = 0; place < copied.Count; place++)
            copied[place] = copied[place] with { GrewBy = await GrowthAsync(source, copied[place], cancellation) };
        return Outcome.Of<IReadOnlyList<CopiedBuild>>(copied);
    }

    private static async Task<CopiedBuild> CopyAsync(IJournal source, IJournal target, Build build, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var record = await source.TakeOutAsync(build.Id, CancellationToken.None);
        var admitted = await target.AdmitAsync(record, CancellationToken.None);
        return new CopiedBuild(admitted.Build, admitted.WereThere, admitted.Added, record.LastHash, await target.VerifyAsync(build.Id, CancellationToken.None));
    }

    private static async Task<int> GrowthAsync(IJournal source, CopiedBuild copied, CancellationToken cancellation) =>
        (await source.ReadAsync(copied.Build.Id, copied.Entries, cancellation)).Count;

    private static async Task<IReadOnlyList<Diagnostic>> BrokenAsync(IJournal source, string place, IReadOnlyList<Build> builds, CancellationToken cancellation)
    {
        var problems = new List<Diagnostic>();
        foreach (var build in builds)
            if (await source.VerifyAsync(build.Id, cancellation) is ChainBroken broken)
                problems.Add(Problem(
                    "broken-record", place, $"The record of build {build.Serial} is broken. {broken.Sentence}",
                    "Go back to a copy that is whole; nothing was copied."));
        return problems;
    }

    private static List<Diagnostic> InTheWay(string place, IReadOnlyList<Build> builds, IReadOnlyList<Build> there, bool goesOn)
    {
        var problems = new List<Diagnostic>();
        foreach (var build in builds)
            if (there.FirstOrDefault(other => other.Id == build.Id) is not null && !goesOn)
                problems.Add(Problem(
                    "build-there-already", place, $"Build {build.Serial} of {build.MachineName} is there already.",
                    "Copy into a new journal, or add --continue if an earlier copy broke off; nothing was copied."));
            else if (there.FirstOrDefault(other => other.Id != build.Id && (other.MachineName, other.Serial) == (build.MachineName, build.Serial)) is not null)
                problems.Add(Problem(
                    "serial-taken", place, $"Another build of {build.MachineName} has the serial number {build.Serial} there.",
                    "Copy into a new journal; nothing was copied."));
        return problems;
    }

    private static Diagnostic Problem(string rule, string place, string message, string mend) =>
        new(rule, new SourcePlace(JournalPlace.NameOf(place), 0, 0), message, mend);
}
