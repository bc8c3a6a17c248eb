using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Computes where a build stands from its plan and its journal: the last word on each check counts.</summary>
internal static class BenchFold
{
    private const int MostSuspects = 8;

    /// <summary>Where the build stands after the entries.</summary>
    public static BenchState Of(BuildSummary build, PlannedMachine planned, IReadOnlyList<Entry> entries)
    {
        var last = LastWords(entries);
        var readings = ReadingsOf(planned, last.Values);
        var posterior = Diagnosis.Of(planned.Dictionary, readings, planned.Simulators?.Invoke());
        var route = Route(planned, entries, last);
        var order = route.Order.ToList();
        var current = order.FirstOrDefault(check => !last.ContainsKey(check));
        var lastRead = last.LastOrDefault(pair => ReadingOf(pair.Value.Content) is not null);
        var next = posterior.IsOff ? NextBest(planned, posterior, last.Keys, lastRead.Key) : null;
        if (next is not null && !order.Contains(next))
            order.Add(next);
        return new BenchState(
            build,
            [.. Steps(planned, order, last).Select(step => step.Check.Id == current || step.Check.Id == next ? WithLeads(planned, route, step) : step)],
            current,
            Suspects.Of(planned, posterior, readings, MostSuspects),
            next,
            Notes(entries),
            entries.Count == 0 ? 0 : entries[^1].Sequence,
            entries.Count == 0 ? "" : entries[^1].Hash)
        {
            UnknownMistake = posterior.Unknown,
            SignOffs = SignOffs(entries),
            SinceChecked = SinceChecked(entries),
            LastReadCheckId = lastRead.Key,
            PlugHint = lastRead.Key is null ? "" : PlugHintOf(planned, ReadingOf(lastRead.Value.Content)!),
        };
    }

    private static string PlugHintOf(PlannedMachine planned, Journal.Reading reading) =>
        planned.FindCheck(reading.CheckId) is { } check && check.Judge(ValueOf(reading)) == Engine.Faults.Verdict.Fail
            ? PlugHint.Of(planned.Machine, check, ValueOf(reading))
            : "";

    private static OrderedDictionary<string, Entry> LastWords(IReadOnlyList<Entry> entries)
    {
        var last = new OrderedDictionary<string, Entry>(StringComparer.Ordinal);
        foreach (var entry in entries)
            if (CheckOf(entry.Content) is { } check)
            {
                last.Remove(check);
                last.Add(check, entry);
            }

        return last;
    }

    private static string? CheckOf(EntryContent content) => content switch
    {
        ReadingEntered entered => entered.Reading.CheckId,
        ReadingCorrected corrected => corrected.Reading.CheckId,
        CheckSkipped skipped => skipped.CheckId,
        _ => null,
    };

    private static Journal.Reading? ReadingOf(EntryContent content) => content switch
    {
        ReadingEntered entered => entered.Reading,
        ReadingCorrected corrected => corrected.Reading,
        _ => null,
    };

    private static Engine.Faults.Reading[] ReadingsOf(PlannedMachine planned, IEnumerable<Entry> last) =>
    [
        .. from entry in last
           let reading = ReadingOf(entry.Content)
           where reading is not null && planned.Dictionary.IndexOfCheck(reading.CheckId) is not null
           select new Engine.Faults.Reading(reading.CheckId, ValueOf(reading)),
    ];

    private static double ValueOf(Journal.Reading reading) => reading.OverRange ? ReadingInterval.OverRange : reading.ValueSi ?? double.NaN;

    private static BenchRoute Route(PlannedMachine planned, IReadOnlyList<Entry> entries, OrderedDictionary<string, Entry> last)
    {
        var contents = entries.Select(entry => entry.Content).ToArray();
        return BenchRoute.Of(
            planned,
            contents.OfType<PlanFixed>().LastOrDefault() is { } plan ? Known(plan.CheckIds) : planned.Plan.Checks,
            Known(contents.Select(CheckOf).OfType<string>().Distinct()),
            Known(last.Where(pair => ReadingOf(pair.Value.Content) is not null).Select(pair => pair.Key)));

        int[] Known(IEnumerable<string> checks) => [.. checks.Select(planned.Dictionary.IndexOfCheck).OfType<int>()];
    }

    private static BenchStep WithLeads(PlannedMachine planned, BenchRoute route, BenchStep step)
    {
        var change = route.StepTo(planned.Dictionary.IndexOfCheck(step.Check.Id)!.Value);
        return step with { Leads = change.LeadWords(step.Check), ChangesMeter = change.ChangesMeter };
    }

    private static string? NextBest(PlannedMachine planned, Posterior posterior, IEnumerable<string> done, string? lastRead) =>
        SafeNextCheck.Of(planned, posterior, done, lastRead) is { } next ? planned.Dictionary.Checks[next].Id : null;

    /// <summary>The step of a check that is not among the build's steps, as if it came last; null when the machine has no such check.</summary>
    public static BenchStep? StepBeside(PlannedMachine planned, BenchState state, string checkId) =>
        planned.Dictionary.IndexOfCheck(checkId) is null ? null : Step(planned, checkId, state.Steps, null);

    private static IReadOnlyList<BenchStep> Steps(PlannedMachine planned, List<string> order, OrderedDictionary<string, Entry> last)
    {
        var steps = new List<BenchStep>(order.Count);
        foreach (var id in order)
            steps.Add(Step(planned, id, steps, last.GetValueOrDefault(id)));
        return steps;
    }

    private static BenchStep Step(PlannedMachine planned, string id, IReadOnlyList<BenchStep> before, Entry? entry)
    {
        var index = planned.Dictionary.IndexOfCheck(id)!.Value;
        var check = planned.Explained(index);
        var setUp = planned.Dictionary.SetUps.First(candidate => candidate.Id == check.SetUp);
        var reading = entry is null ? null : ReadingOf(entry.Content);
        return new BenchStep(
            before.Count + 1,
            check,
            setUp,
            before.Count == 0 || before[^1].SetUp.Id != setUp.Id,
            MeterMode.OfKind(check.Kind).Setting,
            CheckWords.Expected(check),
            StatusOf(check, entry, reading),
            reading?.Text ?? "",
            reading is null ? "" : CheckWords.Shown(check, ValueOf(reading)),
            entry?.Content is CheckSkipped skipped ? skipped.Reason : "",
            entry?.Person ?? "",
            planned.CatchesShort(index));
    }

    private static StepStatus StatusOf(Check check, Entry? entry, Journal.Reading? reading) => (entry, reading) switch
    {
        (null, _) => StepStatus.Open,
        (_, null) => StepStatus.Skipped,
        _ => check.Judge(ValueOf(reading)) switch
        {
            Engine.Faults.Verdict.Pass => StepStatus.Passed,
            Engine.Faults.Verdict.Fail => StepStatus.Failed,
            _ => StepStatus.CannotTell,
        },
    };

    private static IReadOnlyList<JournalNote> Notes(IReadOnlyList<Entry> entries) =>
    [
        .. from entry in entries
           let note = entry.Content switch
           {
               Deviation deviation => new JournalNote(entry.Sequence, entry.Recorded, entry.Person, deviation.Subject, deviation.Note, null),
               PhotoAttached photo => new JournalNote(entry.Sequence, entry.Recorded, entry.Person, photo.Subject, photo.Caption, photo.Sha256),
               PartReceived received when Arrivals.Words(received) is { } words => new JournalNote(entry.Sequence, entry.Recorded, entry.Person, received.Designation, words, null),
               MeasurementTaken taken => new JournalNote(entry.Sequence, entry.Recorded, entry.Person, "", MeasurementWords.Of(taken), null) { FileName = taken.FileName, FileSha256 = taken.Sha256 },
               DeviationAnswered answered => new JournalNote(entry.Sequence, entry.Recorded, entry.Person, "", DeviationHints.AnswerWords(answered), null),
               NoteWritten written => new JournalNote(entry.Sequence, entry.Recorded, entry.Person, "", written.Text, null),
               _ => null,
           }
           where note is not null
           select note,
    ];

    private static IReadOnlyList<SignOff> SignOffs(IReadOnlyList<Entry> entries) =>
    [
        .. from entry in entries
           let signed = entry.Content as SignedOff
           where signed is not null
           select new SignOff(entry.Sequence, entry.Recorded, signed.Person, signed.Role, signed.Statement),
    ];

    // What only signs changes nothing of what was signed.
    private static int? SinceChecked(IReadOnlyList<Entry> entries) =>
        entries.LastOrDefault(entry => entry.Content is SignedOff signed && SecondPerson.IsChecker(signed.Role)) is { } checkedAt
            ? entries.Count(entry => entry.Sequence > checkedAt.Sequence && entry.Content is not SignedOff)
            : null;
}
