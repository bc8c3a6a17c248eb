using Proveout.Engine.Faults;
using Proveout.Workshop;

namespace Proveout.Web.Tests.InMemory;

/// <summary>One build in memory.</summary>
internal sealed class InMemoryBuild(BuildSummary summary)
{
    private readonly Lock _gate = new();
    private readonly HashSet<Guid> _keys = [];
    private TaskCompletionSource _grown = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public BuildSummary Summary { get; } = summary;

    public long Sequence { get; private set; } = 1;

    public Dictionary<string, (string Text, string Person)> Readings { get; } = [];

    public Dictionary<string, (string Reason, string Person)> Skips { get; } = [];

    public List<JournalNote> Notes { get; } = [];

    public List<SignOff> Signatures { get; } = [];

    public Dictionary<string, PhotoContent> Photos { get; } = [];

    public BenchState Add(Guid key, Action<InMemoryBuild> change)
    {
        lock (_gate)
        {
            if (!_keys.Add(key))
                return State();
            Sequence++;
            change(this);
            _grown.SetResult();
            _grown = new(TaskCreationOptions.RunContinuationsAsynchronously);
            return State();
        }
    }

    public async Task<long> GrowsBeyondAsync(long sequence, CancellationToken cancellation)
    {
        while (true)
        {
            Task grown;
            lock (_gate)
            {
                if (Sequence > sequence)
                    return Sequence;
                grown = _grown.Task;
            }

            await grown.WaitAsync(cancellation);
        }
    }

    public BenchState State()
    {
        lock (_gate)
        {
            var steps = OvenPlan.Checks.Select(Step).ToList();
            var failed = steps.Any(step => step.Status == StepStatus.Failed);
            var current = steps.FirstOrDefault(step => step.Status == StepStatus.Open)?.Check.Id;
            var best = failed ? steps.LastOrDefault(step => step.Status == StepStatus.Open)?.Check.Id : null;
            return new BenchState(Summary, steps, current, failed ? Suspects : [], best, [.. Notes], Sequence, $"{Sequence:x64}") { SignOffs = [.. Signatures] };
        }
    }

    private static IReadOnlyList<Suspect> Suspects =>
    [
        new("The bonding wire W3 is missing.", 0.718, Severity.Shock, "The rear panel can become live and nothing trips.", ["w3-missing"]),
        new("The joint of W3 at F1.stud is poor.", 0.276, Severity.Hidden, "The bond may fail when it is needed.", ["w3-poor-1", "w3-poor-2"]),
        new("W3 and W2 are swapped at X1.", 0.006, Severity.Fire, "The wire carries more than it bears.", ["w3-w2-swapped"]),
    ];

    private BenchStep Step(Check check, int index)
    {
        var changes = index == 0 || OvenPlan.Checks[index - 1].SetUp != check.SetUp;
        var blank = new BenchStep(
            index + 1, check, OvenPlan.SetUpOf(check), changes, "Resistance, 200 Ω range", OvenPlan.Expected(check), StepStatus.Open, "", "", "", "", "A missing wire, a wire on the wrong terminal.");
        if (Readings.TryGetValue(check.Id, out var reading))
            return Read(blank, reading.Text, reading.Person);
        return Skips.TryGetValue(check.Id, out var skip) ? blank with { Status = StepStatus.Skipped, Reason = skip.Reason, Person = skip.Person } : blank;
    }

    private static BenchStep Read(BenchStep step, string text, string person)
    {
        var value = TypedReading.Parse(text);
        var status = value is null ? StepStatus.CannotTell : step.Check.Judge(value.Value) == Verdict.Pass ? StepStatus.Passed : StepStatus.Failed;
        return step with { Status = status, ReadingText = text, ReadingShown = value is null ? "-" : TypedReading.Show(value.Value), Person = person };
    }
}
