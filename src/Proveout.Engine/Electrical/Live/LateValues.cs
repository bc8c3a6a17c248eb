namespace Proveout.Engine.Electrical;

/// <summary>A number for each branch from one on, under the branch's own number: what only the last branches have is not kept, nor copied, for the others.</summary>
internal sealed class LateValues
{
    private readonly double[] _values;
    private readonly int _first;

    public LateValues(int first, int branches) => (_first, _values) = (first, new double[branches - first]);

    private LateValues(LateValues other) => (_first, _values) = (other._first, (double[])other._values.Clone());

    public double this[int branch]
    {
        get => _values[branch - _first];
        set => _values[branch - _first] = value;
    }

    public LateValues Copy() => new(this);
}
