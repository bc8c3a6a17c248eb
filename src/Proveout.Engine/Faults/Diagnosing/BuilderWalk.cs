namespace Proveout.Engine.Faults;

/// <summary>One simulated builder at the bench.</summary>
internal sealed class BuilderWalk(
    FaultDictionary dictionary, IFaultSimulator built, IFaultSimulator? diagnosing, SimulatedBuilders builders, int[] made, Random random)
{
    // A group of suspects that no check tells apart and that holds this much of the probability is taken for found.
    private const double Found = 0.95;

    // A check that tells less than this is dearer than a look at the likeliest place.
    private const double LeastBits = 0.05;

    private readonly List<int> _left = [.. made];
    private readonly OrderedDictionary<string, Reading> _readings = new(StringComparer.Ordinal);
    private BenchPosition _position = BenchPosition.Start;
    private int _checks;
    private int _onceOff;
    private double _bitsOnceOff = double.NaN;
    private double _mostBits;
    private int _worstRank = 1;
    private bool _alwaysSuspected = true;

    public BuilderTrial Run()
    {
        while (_left.Count > 0 && _worstRank == 1)
        {
            if (_readings.Values.Any(IsOff))
                Follow(Diagnosis.Of(dictionary, [.. _readings.Values], diagnosing));
            else if (builders.WhileAllPass.FirstOrDefault(check => !_readings.ContainsKey(dictionary.Checks[check].Id), -1) is >= 0 and var check)
                Read(check);
            else
                _worstRank = 0;
        }

        return new(made, _checks, _onceOff, _bitsOnceOff, _mostBits, _worstRank, _alwaysSuspected);
    }

    private bool IsOff(Reading reading) => dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value].Judge(reading.Value) == Verdict.Fail;

    private void Follow(Posterior posterior)
    {
        var suspects = builders.Groups.Merge(posterior);
        var rank = suspects.Index().FirstOrDefault(suspect => IsTrue(suspect.Item.Faults), (-1, default)).Index + 1;
        _alwaysSuspected &= rank > 0;
        if (double.IsNaN(_bitsOnceOff))
            _bitsOnceOff = FaultGroups.Entropy(suspects.Select(suspect => suspect.Probability));
        var next = suspects.Count > 0 && suspects[0].Probability < Found
            ? NextCheck.Of(dictionary, posterior, _readings.Keys.ToHashSet(StringComparer.Ordinal), _position)
            : null;
        if (next is { Bits: >= LeastBits })
        {
            _mostBits = Math.Max(_mostBits, next.Bits);
            _onceOff++;
            Read(next.Check);
        }
        else if (rank == 1)
            Mend(suspects[0].Faults);
        else
            _worstRank = rank;
    }

    private void Read(int check)
    {
        var about = dictionary.Checks[check];
        var shown = _left.Count == 1 ? dictionary.IntervalOf(_left[0], check) : built.Shown([.. _left], check)!.Value;
        _readings[about.Id] = new(about.Id, RandomReading.Draw(shown, random));
        _position = BenchPosition.After(about);
        _checks++;
    }

    // Every one of them was made, as far as any check can tell.
    private bool IsTrue(IReadOnlyList<int> faults)
    {
        var groups = _left.Select(builders.Groups.Of).ToList();
        return faults.All(fault => groups.Remove(builders.Groups.Of(fault)));
    }

    // What a mended mistake has to do with is read again.
    private void Mend(IReadOnlyList<int> faults)
    {
        foreach (var fault in faults)
        {
            var mended = _left.First(left => builders.Groups.Of(left) == builders.Groups.Of(fault));
            _left.Remove(mended);
            foreach (var check in dictionary.ResponseOf(mended).Checks)
                _readings.Remove(dictionary.Checks[check].Id);
        }
    }
}
