using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What checks show under a fault, gathered check by check. One thread's own.</summary>
internal sealed class AlteredReadings
{
    private readonly List<int> _checks = [];
    private readonly List<ReadingInterval> _intervals = [];

    /// <summary>True when the fault alters nothing that lies between the leads of any check, whether or not a meter shows it.</summary>
    public bool IsSameCircuit { get; private set; } = true;

    /// <summary>Indices of the checks that may show something else than of the sound machine, in the order they were found.</summary>
    public IReadOnlyList<int> Checks => _checks;

    /// <summary>What each of them may show.</summary>
    public IReadOnlyList<ReadingInterval> Intervals => _intervals;

    /// <summary>Forgets what was gathered.</summary>
    public void Clear()
    {
        _checks.Clear();
        _intervals.Clear();
        IsSameCircuit = true;
    }

    /// <summary>Takes what a check may show now that what lies between its leads is altered; a meter that shows the same as before is not listed.</summary>
    /// <param name="index">Index of the check among all.</param>
    /// <param name="expectation">What it shows of the sound machine.</param>
    /// <param name="shown">What it may show.</param>
    public void Add(int index, ReadingInterval expectation, ReadingInterval shown)
    {
        IsSameCircuit = false;
        if (shown == expectation)
            return;
        _checks.Add(index);
        _intervals.Add(shown);
    }

    /// <summary>What the fault changes.</summary>
    public FaultResponse ToResponse() => new([.. _checks], [.. _intervals]);
}
