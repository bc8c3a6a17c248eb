namespace Proveout.Engine.Faults;

/// <summary>How probable each class of intervals is at each check, given what is believed of the faults.</summary>
internal sealed class CheckBeliefs
{
    private readonly ShownTable _table;
    private readonly double[] _mass;
    private readonly double[] _changed;
    private readonly double[] _untold;
    private readonly double _total;

    public CheckBeliefs(FaultDictionary dictionary, Posterior posterior)
    {
        _table = dictionary.Shown;
        _mass = new double[_table.First[^1]];
        _changed = new double[dictionary.Checks.Count];
        _untold = new double[dictionary.Checks.Count];
        _total = posterior.Sound;
        foreach (var hypothesis in posterior.Hypotheses)
        {
            _total += hypothesis.Probability;
            if (hypothesis.Faults.Count == 1)
                AddAlone(dictionary, hypothesis.Faults[0], hypothesis.Probability);
            else if (hypothesis.Faults.Count > 1)
                AddTogether(dictionary, hypothesis.Faults, hypothesis.Probability);
        }
    }

    /// <summary>The checks that any hypothesis changes.</summary>
    public IEnumerable<int> Checks => Enumerable.Range(0, _changed.Length).Where(check => _changed[check] > 0);

    /// <summary>Length of the scratch that <see cref="Information"/> needs.</summary>
    public int ScratchSize => (2 * _table.Classes.Max(classes => classes.Count)) + 2;

    /// <summary>Bits that a check is expected to tell; asked once for each check, for it completes the check's masses.</summary>
    public double Information(int check, double[] scratch)
    {
        var mass = _mass.AsSpan(_table.First[check], _table.First[check + 1] - _table.First[check]);
        var told = _total - _untold[check];
        if (told <= 0)
            return 0;
        mass[0] += Math.Max(0, told - _changed[check]);
        foreach (ref var one in mass)
            one /= told;
        return told / _total * _table.Classes[check].Information(mass, scratch);
    }

    private void AddAlone(FaultDictionary dictionary, int fault, double probability)
    {
        var checks = dictionary.ResponseOf(fault).Checks;
        var classes = _table.ClassesOf(fault);
        for (var place = 0; place < checks.Length; place++)
            Add(checks[place], classes[place], probability);
    }

    private void AddTogether(FaultDictionary dictionary, IReadOnlyList<int> faults, double probability)
    {
        var shown = new Dictionary<int, int?>();
        foreach (var fault in faults)
        {
            var checks = dictionary.ResponseOf(fault).Checks;
            var classes = _table.ClassesOf(fault);
            for (var place = 0; place < checks.Length; place++)
                shown[checks[place]] = shown.ContainsKey(checks[place]) ? null : classes[place];
        }

        foreach (var (check, number) in shown)
            if (number is { } known)
                Add(check, known, probability);
            else
                _untold[check] += probability;
    }

    private void Add(int check, int number, double probability)
    {
        _mass[_table.First[check] + number] += probability;
        _changed[check] += probability;
    }
}
