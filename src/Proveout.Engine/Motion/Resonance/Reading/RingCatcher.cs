namespace Proveout.Engine.Motion;

/// <summary>Keeps what follows the strongest blows of a recording while it goes by, and a little of what was before each.</summary>
internal sealed class RingCatcher
{
    private const double BlockSeconds = 0.01;
    private const double RingSeconds = 1.5;
    private const double QuietSeconds = 0.15;
    private const double ShortestSeconds = 0.1;
    private const int MostSamples = 16_384;
    private const int MostRings = 8;
    private const int Remembered = 50;

    // A block with 30 times (15 dB) the energy of the median of the half second before it is a blow; a sweep or noise does not rise so fast.
    private const double LeastRise = 30;
    private const double MeanSlowness = 0.02;
    private const int SwingBlocks = 6;
    private const double LeastOverSwing = 3;

    private readonly int _block;
    private readonly int _ring;
    private readonly int _quiet;
    private readonly double[][] _history;
    private readonly double[] _means;
    private readonly double[] _energies = new double[Remembered];
    private readonly List<(double Energy, Ring[] Rings)> _caught = [];
    private long _count;
    private long _blocks;
    private long _blow = -1;
    private double _blowEnergy;

    /// <param name="rate">Samples a second.</param>
    /// <param name="directions">How many directions.</param>
    public RingCatcher(double rate, int directions)
    {
        Rate = rate;
        _block = (int)Math.Max(4, BlockSeconds * rate);
        _ring = (int)Math.Clamp(RingSeconds * rate, 4 * _block, MostSamples);
        _quiet = (int)Math.Clamp(QuietSeconds * rate, _block, MostSamples / 4);
        _history = [.. Enumerable.Range(0, directions).Select(_ => new double[_ring + _quiet + (2 * _block)])];
        _means = new double[directions];
    }

    /// <summary>Samples a second.</summary>
    public double Rate { get; }

    /// <summary>What was caught, by blow, then by direction; in the order of time.</summary>
    public IReadOnlyList<Ring[]> Rings => [.. _caught.Select(item => item.Rings).OrderBy(rings => rings[0].StartSample)];

    /// <summary>Takes samples of all directions.</summary>
    /// <param name="samples">An array for each direction.</param>
    /// <param name="length">How many of each count.</param>
    public void Add(double[][] samples, int length)
    {
        for (var taken = 0; taken < length;)
        {
            var part = (int)Math.Min(length - taken, _block - (_count % _block));
            for (var direction = 0; direction < samples.Length; direction++)
                Remember(_history[direction], samples[direction].AsSpan(taken, part));
            taken += part;
            _count += part;
            if (_count % _block == 0)
                Judge();
        }
    }

    /// <summary>What follows does not continue the last samples.</summary>
    public void Break()
    {
        Close(_count);
        // Whole blocks go on; what was before the break tells nothing of what is quiet after it.
        _count += (_block - (_count % _block)) % _block;
        _blocks = 0;
    }

    private void Remember(double[] history, ReadOnlySpan<double> samples)
    {
        var place = (int)(_count % history.Length);
        var first = Math.Min(samples.Length, history.Length - place);
        samples[..first].CopyTo(history.AsSpan(place));
        samples[first..].CopyTo(history);
    }

    private void Judge()
    {
        var energy = 0.0;
        for (var direction = 0; direction < _history.Length; direction++)
        {
            var history = _history[direction];
            var mean = _means[direction];
            var place = (int)((_count - _block) % history.Length);
            var first = Math.Min(_block, history.Length - place);
            var (sum, squares) = Sums(history.AsSpan(place, first), mean);
            var (moreSum, moreSquares) = Sums(history.AsSpan(0, _block - first), mean);
            (sum, squares) = (sum + moreSum, squares + moreSquares);

            energy += squares / _block;
            _means[direction] = _blocks == 0 ? mean + (sum / _block) : mean + (MeanSlowness * sum / _block);
        }

        if (_blow >= 0 && _count - _blow >= _ring)
            Close(_count);
        if (_blocks > Remembered && IsBlow(energy))
        {
            Close(_count - _block);
            (_blow, _blowEnergy) = (_count - _block, energy);
        }
        else if (_blow >= 0)
        {
            _blowEnergy = Math.Max(_blowEnergy, energy);
        }

        _energies[_blocks++ % Remembered] = energy;
    }

    private static (double Sum, double Squares) Sums(ReadOnlySpan<double> samples, double mean)
    {
        var (sum, squares) = (0.0, 0.0);
        foreach (var sample in samples)
        {
            var value = sample - mean;
            sum += value;
            squares += value * value;
        }

        return (sum, squares);
    }

    private bool IsBlow(double energy)
    {
        if (energy <= 2 * _energies.Average())
            return false;
        // Within a ringing the energy swings with every turn: a blow rises above all of the last ones.
        for (var back = 1; back <= SwingBlocks; back++)
            if (energy < LeastOverSwing * _energies[(_blocks - back) % Remembered])
                return false;
        double[] sorted = [.. _energies.Order()];
        return energy > LeastRise * sorted[Remembered / 2];
    }

    private void Close(long end)
    {
        if (_blow < 0)
            return;
        var (blow, length) = (_blow, (int)Math.Min(_ring, end - _blow));
        _blow = -1;
        if (length < ShortestSeconds * Rate)
            return;
        if (_caught.Count == MostRings)
        {
            var weakest = _caught.MinBy(item => item.Energy);
            if (weakest.Energy >= _blowEnergy)
                return;
            _caught.Remove(weakest);
        }

        _caught.Add((_blowEnergy, [.. _history.Select(history => new Ring(blow, Part(history, blow - _quiet, _quiet), Part(history, blow, length)))]));
    }

    private static double[] Part(double[] history, long from, int length) =>
        [.. Enumerable.Range(0, length).Select(index => history[((from + index) % history.Length + history.Length) % history.Length])];
}
