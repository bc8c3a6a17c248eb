using System.Diagnostics;

namespace Proveout.Fuzz;

/// <summary>
/// Changes inputs of one target again and again. An input with an outcome that none had before is kept and changed further, so that the changes work
/// their way in behind the first checks.
/// </summary>
public sealed class Campaign
{
    private const int MostKept = 3000;

    private readonly FuzzTarget _target;
    private readonly Random _random;
    private readonly Mutator _mutator;
    private readonly List<byte[]> _pool;
    private readonly HashSet<string> _outcomes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Finding> _findings = new(StringComparer.Ordinal);
    private byte[] _current = [];
    private long _startedAt;
    private long _workAtStart;
    private long _count;
    private volatile bool _isAbandoned;

    /// <summary>Prepares one; the same seed makes the same inputs.</summary>
    public Campaign(FuzzTarget target, int seed)
    {
        ArgumentNullException.ThrowIfNull(target);
        _target = target;
        _random = new Random(seed);
        _pool = [.. Corpus.Of(target.Name).Select(input => input.Bytes)];
        _mutator = new Mutator(_random, [.. target.Tokens, .. Words.Of(_pool)], target.MostBytes);
    }

    /// <summary>Is told each input before it is read: what ends the process cannot be told afterwards.</summary>
    public Action<byte[]> Before { get; init; } = _ => { };

    /// <summary>How much time of a processor an input may take before it is left behind, and a tenth of how long one that does nothing is waited for: others may have the processor.</summary>
    public TimeSpan LongestWait { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>Inputs read.</summary>
    public long Count => Interlocked.Read(ref _count);

    /// <summary>Different outcomes.</summary>
    public int Outcomes => _outcomes.Count;

    /// <summary>One input for each thing that went wrong.</summary>
    public IReadOnlyCollection<Finding> Findings => _findings.Values;

    /// <summary>Reads the inputs that are kept and then changed ones, until a number or a time is reached.</summary>
    public void Run(long mutations, TimeSpan longest)
    {
        // What never comes back cannot be stopped, but it can be left behind.
        var work = new Thread(() => Work(mutations, longest)) { IsBackground = true, Name = _target.Name };
        Begin();
        work.Start();
        while (!work.Join(100))
        {
            var waited = Stopwatch.GetElapsedTime(Volatile.Read(ref _startedAt));
            if (waited < LongestWait || (waited < LongestWait * 10 && Environment.CpuUsage.TotalTime.Ticks - Volatile.Read(ref _workAtStart) < LongestWait.Ticks))
                continue;
            _isAbandoned = true;
            Note(new(_target.Name, "hang", $"No end after {waited.TotalSeconds:0} s.", _current));
            return;
        }
    }

    private void Work(long mutations, TimeSpan longest)
    {
        var start = Stopwatch.GetTimestamp();
        foreach (var input in _pool.ToArray())
            Take(input);
        for (var number = 0L; number < mutations && !_isAbandoned && Stopwatch.GetElapsedTime(start) < longest; number++)
        {
            var (parent, other) = (Pick(), Pick());
            var input = _target.ChangeInside is { } inside && _random.Next(3) > 0 ? inside(_mutator, parent, other) : _mutator.Change(parent, other);
            if (Take(input) && _pool.Count < MostKept && input.Length <= _target.MostBytes)
                _pool.Add(input);
        }
    }

    // What was found last is nearest to something new.
    private byte[] Pick() => _pool[_random.Next(2) == 0 ? _random.Next(_pool.Count) : _random.Next(_pool.Count * 3 / 4, _pool.Count)];

    private bool Take(byte[] input)
    {
        _current = input;
        Begin();
        Before(input);
        var (outcome, finding) = Watch.Read(_target, input);
        Interlocked.Increment(ref _count);
        if (finding is not null && !_isAbandoned)
            Note(finding);
        return _outcomes.Add(outcome);
    }

    private void Begin()
    {
        Volatile.Write(ref _workAtStart, Environment.CpuUsage.TotalTime.Ticks);
        Volatile.Write(ref _startedAt, Stopwatch.GetTimestamp());
    }

    private void Note(Finding finding)
    {
        if (!_findings.ContainsKey(finding.Kind))
            _findings[finding.Kind] = finding.Kind is "hang" or "slow" or "large" ? finding : Smaller.Of(_target, finding);
    }
}
