namespace Proveout.Engine.Electrical;

/// <summary>Which faults cannot be made together: those that change the same element, such as two that move the same end.</summary>
internal sealed class Contradictions
{
    private readonly int[][] _elements;
    private readonly Dictionary<int, List<int>> _faultsOf = [];

    /// <summary>Lists the faults by what they change.</summary>
    /// <param name="elements">Numbers of the elements that each fault changes.</param>
    public Contradictions(int[][] elements)
    {
        _elements = elements;
        for (var fault = 0; fault < elements.Length; fault++)
            foreach (var element in elements[fault])
                (_faultsOf.TryGetValue(element, out var list) ? list : _faultsOf[element] = []).Add(fault);
    }

    /// <summary>Numbers of the elements that a fault changes.</summary>
    public static IEnumerable<int> ElementsOf(WiringFault fault) => fault.Changes.Select(change => change.ChangedElement).OfType<int>().Distinct();

    /// <summary>True when two of the faults cannot be made together.</summary>
    public bool Among(ReadOnlySpan<int> faults)
    {
        for (var one = 1; one < faults.Length; one++)
            for (var two = 0; two < one; two++)
                if (faults[one] == faults[two] || _elements[faults[one]].AsSpan().ContainsAny(_elements[faults[two]]))
                    return true;
        return false;
    }

    /// <summary>The faults that cannot be made together with a fault, rising, without itself.</summary>
    public int[] Of(int fault) => [.. _elements[fault].SelectMany(element => _faultsOf[element]).Where(other => other != fault).Distinct().Order()];
}
