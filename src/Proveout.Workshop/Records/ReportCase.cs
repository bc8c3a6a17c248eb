using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Publish.Report;

namespace Proveout.Workshop;

/// <summary>Puts the record of a build together for the report writers.</summary>
/// <param name="bench">Knows where the build stands.</param>
/// <param name="journal">Keeps its entries and photographs.</param>
/// <param name="clock">Says when the report is written.</param>
public sealed class ReportCase(IBench bench, IJournal journal, TimeProvider clock)
{
    private const int MostPairs = 6;

    /// <summary>The report of a build; null when there is no such build.</summary>
    public async Task<ReportModel?> OfAsync(string buildId, CancellationToken cancellation)
    {
        if (await bench.StateAsync(buildId, cancellation) is not { } state || !Guid.TryParse(buildId, out var id))
            return null;
        var entries = await journal.ReadAsync(id, 0, cancellation);
        var build = await journal.FindBuildAsync(id, cancellation);
        var plan = bench.Plan(state.Build.MachineId);
        return new ReportModel(
            state.Build.MachineName,
            plan?.Machine.Summary ?? "",
            build!.MachineFingerprint,
            state.Build.Serial,
            state.Build.Builder,
            state.Build.Started,
            clock.GetUtcNow(),
            [.. entries.Select(entry => entry.Content).OfType<InstrumentDeclared>().Select(Instrument)],
            [.. state.Steps.SelectMany(step => step.SetUp.Cautions).Distinct()],
            [.. state.Steps.Select(step => Row(step, entries))],
            await DeviationsAsync(state, id, cancellation),
            [.. bench.Coverage(state.Build.MachineId, Read(state)).Select(kind => new ReportCoverage(kind.Kind, kind.Faults, kind.Caught))],
            [.. (plan?.Uncovered ?? []).Select(group => new ReportGap(group.Sentence, SeverityWords.Of(group.Severity), group.OtherEvidence, group.Count))],
            [.. state.SignOffs.Select(signed => new ReportSignOff(signed.Person, signed.Role, signed.Statement, signed.When))],
            state.LastHash,
            state.LastSequence)
        {
            Pairs = plan is null ? null : PairsOf(plan.Pairs),
        };
    }

    /// <summary>The report of a build as a PDF document; null when there is no such build.</summary>
    public async Task<byte[]?> PdfAsync(string buildId, CancellationToken cancellation)
    {
        if (await OfAsync(buildId, cancellation) is not { } report)
            return null;
        using var document = new MemoryStream();
        PdfReport.Write(report, document);
        return document.ToArray();
    }

    // Only what was read catches anything: a check left out or not reached yet counts for nothing.
    private static IEnumerable<string> Read(BenchState state) =>
        state.Steps.Where(step => step.Status is StepStatus.Passed or StepStatus.Failed).Select(step => step.Check.Id);

    private static ReportPairs PairsOf(PairsView pairs) => new(
        pairs.Summary,
        [
            .. pairs.Groups.Take(MostPairs).Select(group => new ReportGap(
                $"{group.Kinds}. {group.Reading} Such as: {group.Example}", SeverityWords.Of(group.Severity), string.Join(" ", group.OtherEvidence), group.Count)),
        ],
        pairs.Groups.Skip(MostPairs).Sum(group => group.Count));

    private static string Instrument(InstrumentDeclared instrument) =>
        instrument.LeadsZeroed ? $"{instrument.Model}, leads zeroed" : instrument.Model;

    private static ReportRow Row(BenchStep step, IReadOnlyList<Entry> entries) => new(
        step.Number,
        step.SetUp.Title,
        step.Check.Title,
        step.Check.Why,
        step.Expected,
        step.ReadingShown,
        VerdictOf(step.Status),
        step.Reason,
        step.Person,
        entries.LastOrDefault(entry => IsOf(entry.Content, step.Check.Id))?.Recorded);

    private static bool IsOf(EntryContent content, string checkId) => content switch
    {
        ReadingEntered entered => entered.Reading.CheckId == checkId,
        ReadingCorrected corrected => corrected.Reading.CheckId == checkId,
        CheckSkipped skipped => skipped.CheckId == checkId,
        _ => false,
    };

    private static ReportVerdict VerdictOf(StepStatus status) => status switch
    {
        StepStatus.Passed => ReportVerdict.Pass,
        StepStatus.Failed => ReportVerdict.Fail,
        StepStatus.CannotTell => ReportVerdict.CannotTell,
        StepStatus.Skipped => ReportVerdict.LeftOut,
        _ => ReportVerdict.NotDone,
    };

    private async Task<ValueList<ReportDeviation>> DeviationsAsync(BenchState state, Guid build, CancellationToken cancellation)
    {
        var deviations = new List<ReportDeviation>();
        foreach (var note in state.Deviations)
        {
            var photo = note.PhotoSha256 is { } sha256 ? await journal.ReadPhotoAsync(build, sha256, cancellation) : null;
            deviations.Add(new ReportDeviation(note.When, note.Person, note.Subject, note.Text, photo?.Bytes, note.PhotoSha256 ?? ""));
        }

        return deviations.ToValueList();
    }
}
