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
        var order = Order(planned, entries, last.Keys);
        var current = order.FirstOrDefault(check => !last.ContainsKey(check));
        var next = posterior.IsOff ? NextBest(planned, posterior, last.Keys, last.Keys.LastOrDefault()) : null;
        if (next is not null && !order.Contains(next))
            order.Add(next);
        var lastRead = last.LastOrDefault(pair => ReadingOf(pair.Value.Content) is not null);
        return new BenchState(
            build,
            Steps(planned, order, last),
            current,
            Suspects.Of(planned, posterior, readings, MostSuspects),
            next,
            Notes(entries),
            entries.Count == 0 ? 0 : entries[^1].Sequence,
            entries.Count == 0 ? "" : entries[^1].Hash)
        {
            UnknownMistake = posterior.Unknown,
            SignOffs = SignOffs(entries),
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

    private static List<string> Order(PlannedMachine planned, IReadOnlyList<Entry> entries, IEnumerable<string> done)
    {
        var fixedPlan = entries.Select(entry => entry.Content).OfType<PlanFixed>().LastOrDefault();
        var order = (fixedPlan?.CheckIds ?? [.. planned.Plan.Checks.Select(check => planned.Dictionary.Checks[check].Id)])
            .Where(check => planned.Dictionary.IndexOfCheck(check) is not null)
            .ToList();
        order.AddRange(done.Where(check => !order.Contains(check) && planned.Dictionary.IndexOfCheck(check) is not null).ToArray());
        return order;
    }

    private static string? NextBest(PlannedMachine planned, Posterior posterior, IEnumerable<string> done, string? lastCheck)
    {
        var position = BenchPosition.After(planned.Dictionary, lastCheck);
        var next = NextCheck.Of(planned.Dictionary, posterior, done.ToHashSet(StringComparer.Ordinal), position);
        return next is null ? null : planned.Dictionary.Checks[next.Check].Id;
    }

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
}
