using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>
/// Says of each check whether a reading taken on the earlier machine still holds: only when nothing on what it measures has changed, no mistake
/// that the work could have brought in or taken away shows at it, and every other mistake shows there as it did.
/// </summary>
/// <remarks>One mistake at a time: two, of which the work brought one in, are not reckoned with (docs/methods/compare.md).</remarks>
internal sealed class ReadingValidity
{
    // Two networks that differ elsewhere give the same limits but for the arithmetic: far below what any meter shows.
    private const double ArithmeticNoise = 1e-6;

    private readonly Side _before;
    private readonly Side _after;
    private readonly IReadOnlyDictionary<string, string> _renamed;
    private readonly (int Before, int After)[] _shared;
    private readonly int[] _onlyBefore;
    private readonly int[] _onlyAfter;

    public ReadingValidity(PlannedMachine before, PlannedMachine after, IReadOnlyList<DesignChange> changes)
    {
        _renamed = DesignChanges.RenamedConductors(before.Machine.Design, after.Machine.Design);
        var oldNames = _renamed.ToDictionary(pair => pair.Value, pair => pair.Key, StringComparer.Ordinal);
        _before = new Side(before, changes, oldNames, _renamed);
        _after = new Side(after, changes, oldNames, new Dictionary<string, string>());
        var places = before.Campaign.Faults.Index().ToDictionary(item => NewId(item.Item.Fault.Id), item => item.Index, StringComparer.Ordinal);
        var ids = after.Campaign.Faults.Select(fault => fault.Fault.Id).ToArray();
        _shared = [.. ids.Index().Where(item => places.ContainsKey(item.Item)).Select(item => (places[item.Item], item.Index))];
        _onlyBefore = [.. Enumerable.Range(0, places.Count).Except(_shared.Select(pair => pair.Before))];
        _onlyAfter = [.. Enumerable.Range(0, ids.Length).Except(_shared.Select(pair => pair.After))];
    }

    /// <summary>What becomes of the reading of a check of either machine.</summary>
    /// <exception cref="ArgumentException">Neither machine has such a check.</exception>
    public ComparedCheck Of(string id) => (_before.IndexOf(id), _after.IndexOf(id)) switch
    {
        (null, null) => throw new ArgumentException($"Neither machine has a check {id}.", nameof(id)),
        (null, { } now) => new(_after.CheckAt(now), CheckStanding.New, "The earlier machine had no such check."),
        ({ } old, null) => new(_before.CheckAt(old), CheckStanding.Gone, "The changed machine has no such check."),
        ({ } old, { } now) => ReasonToRepeat(old, now) is { } reason
            ? new(_after.CheckAt(now), CheckStanding.Repeat, reason)
            : new(_after.CheckAt(now), CheckStanding.StillHolds, "Nothing on what it measures has changed, and no mistake at what was changed shows here."),
    };

    private string? ReasonToRepeat(int old, int now)
    {
        var (was, check) = (_before.CheckAt(old), _after.CheckAt(now));
        if (!Alike(was.Expectation, check.Expectation))
            return $"It should now read {CheckWords.Expected(check)}; it was {CheckWords.Expected(was)}.";
        if (was.Kind != check.Kind || was.SetUp != check.SetUp || !was.Points.Equals(check.Points))
            return "It is now done in another way.";
        var changed = _before.MeasuredBy(old);
        changed.SymmetricExceptWith(_after.MeasuredBy(now));
        if (changed.Count > 0)
            return $"What it measures has changed: {string.Join(", ", changed.Select(element => element.Subject).Distinct().Order(StringComparer.Ordinal))}.";
        return MistakeThatShows(old, now) is { } mistake ? $"A mistake at what was changed would show here: {mistake}" : null;
    }

    private string? MistakeThatShows(int old, int now) =>
        _after.FirstThatShows(_onlyAfter, now)
        ?? _before.FirstThatShows(_onlyBefore, old)
        ?? _after.FirstThatShows(_shared.Where(pair => _after.IsTouched(pair.After) || _before.IsTouched(pair.Before)).Select(pair => pair.After), now)
        ?? _shared
            .Where(pair => !Alike(_before.Shown(pair.Before, old), _after.Shown(pair.After, now)))
            .Select(pair => _after.SentenceOf(pair.After))
            .FirstOrDefault();

    // Identifiers of faults name what they are about, parted by colons.
    private string NewId(string id) => string.Join(':', id.Split(':').Select(name => _renamed.GetValueOrDefault(name, name)));

    private static bool Alike(ReadingInterval one, ReadingInterval other) => Alike(one.Low, other.Low) && Alike(one.High, other.High);

    private static bool Alike(double one, double other) =>
        one.Equals(other) || Math.Abs(one - other) <= ArithmeticNoise * Math.Max(Math.Abs(one), Math.Abs(other));

    private sealed class Side(
        PlannedMachine planned, IReadOnlyList<DesignChange> changes, IReadOnlyDictionary<string, string> oldNames, IReadOnlyDictionary<string, string> renamed)
    {
        private readonly Dictionary<string, MeasuredIslands> _islands = new(StringComparer.Ordinal);
        private readonly bool[] _touched = TouchedFaults.Of(planned.Campaign, changes, oldNames);
        private readonly Dictionary<string, int> _setUps = planned.Dictionary.SetUps.Index().ToDictionary(item => item.Item.Id, item => item.Index, StringComparer.Ordinal);

        public int? IndexOf(string id) => planned.Dictionary.IndexOfCheck(id);

        public Check CheckAt(int index) => planned.Dictionary.Checks[index];

        public bool IsTouched(int fault) => _touched[fault];

        public ReadingInterval Shown(int fault, int check) => planned.Dictionary.IntervalOf(fault, check);

        public string SentenceOf(int fault) => planned.Dictionary.Faults[fault].Sentence;

        public string? FirstThatShows(IEnumerable<int> faults, int check) =>
            faults.Where(fault => planned.Dictionary.ResponseOf(fault).At(check) is not null).Select(SentenceOf).FirstOrDefault();

        public HashSet<MeasuredElement> MeasuredBy(int check)
        {
            var setUp = CheckAt(check).SetUp;
            if (!_islands.TryGetValue(setUp, out var islands))
                _islands[setUp] = islands = new MeasuredIslands(planned.Campaign, _setUps[setUp], renamed);
            var (red, black) = planned.Campaign.NodesOf(check);
            return islands.Between(red, black);
        }
    }
}
