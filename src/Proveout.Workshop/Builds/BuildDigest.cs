using Proveout.Engine.Faults;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>What is kept in memory of one build so that thousands can be compared: the last word on each check, what was found, what differs.</summary>
/// <param name="build">The build.</param>
/// <param name="checks">Names of checks that all builds of a machine share: each entry brings its own copy of them.</param>
internal sealed class BuildDigest(Build build, SharedTexts checks)
{
    private readonly Dictionary<string, CheckWord> _words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, MistakeFound> _mistakes = new(StringComparer.Ordinal);
    private readonly List<JournalNote> _deviations = [];
    private readonly List<JournalNote> _photos = [];
    private readonly Dictionary<(Guid Build, int Sequence), DeviationAnswered> _answers = [];
    private int? _done;

    public Build Build => build;

    /// <summary>How many of its entries are in here.</summary>
    public int Recorded { get; private set; }

    public DateTimeOffset LastEntry { get; private set; } = build.Started;

    /// <summary>Its plan, as fixed last.</summary>
    public IReadOnlyList<string> Plan { get; private set; } = [];

    /// <summary>How many checks of the plan have a word.</summary>
    public int Done => _done ??= Plan.Count(_words.ContainsKey);

    public bool IsSigned { get; private set; }

    public IReadOnlyDictionary<string, CheckWord> Words => _words;

    public IReadOnlyCollection<MistakeFound> Mistakes => _mistakes.Values;

    public IReadOnlyList<JournalNote> Deviations => _deviations;

    public IReadOnlyList<JournalNote> Photos => _photos;

    public IReadOnlyDictionary<(Guid Build, int Sequence), DeviationAnswered> Answers => _answers;

    /// <summary>Takes an entry in, once; returns the check that it says something of, or null.</summary>
    public string? Take(Entry entry)
    {
        if (entry.Sequence <= Recorded)
            return null;
        (Recorded, LastEntry, _done) = (entry.Sequence, entry.Recorded, null);
        switch (entry.Content)
        {
            case ReadingEntered entered:
                return Read(entered.Reading);
            case ReadingCorrected corrected:
                return Read(corrected.Reading);
            case CheckSkipped skipped:
                return Note(skipped.CheckId, new(double.NaN, HasFailed(skipped.CheckId)));
            case PlanFixed plan:
                Plan = plan.CheckIds;
                break;
            case SignedOff:
                IsSigned = true;
                break;
            case MistakeFound mistake:
                _mistakes.TryAdd(mistake.FaultId, mistake);
                break;
            case Deviation deviation:
                _deviations.Add(new(entry.Sequence, entry.Recorded, entry.Person, deviation.Subject, deviation.Note, null));
                break;
            case PhotoAttached photo:
                _photos.Add(new(entry.Sequence, entry.Recorded, entry.Person, photo.Subject, photo.Caption, photo.Sha256));
                break;
            case DeviationAnswered answered:
                _answers[(answered.NotedIn, answered.NotedAt)] = answered;
                break;
        }

        return null;
    }

    private string Read(Journal.Reading reading)
    {
        var value = reading.OverRange ? ReadingInterval.OverRange : reading.ValueSi ?? double.NaN;
        return Note(reading.CheckId, new(value, HasFailed(reading.CheckId) || reading.Verdict == VerdictWords.Of(Verdict.Fail)));
    }

    private string Note(string check, CheckWord word)
    {
        var shared = checks.Of(check);
        _words[shared] = word;
        return shared;
    }

    private bool HasFailed(string check) => _words.TryGetValue(check, out var word) && word.HasFailed;
}
