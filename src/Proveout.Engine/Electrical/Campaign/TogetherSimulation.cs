namespace Proveout.Engine.Electrical;

/// <summary>Simulates several faults at once as one, where each element is changed by one of them only.</summary>
internal static class TogetherSimulation
{
    /// <summary>One fault that stands for all.</summary>
    /// <exception cref="ArgumentException">Two of the faults change the same element.</exception>
    public static WiringFault Merge(IEnumerable<WiringFault> faults)
    {
        var all = faults.ToArray();
        var changes = all.SelectMany(fault => fault.Changes).ToArray();
        var elements = changes.Select(change => change.ChangedElement).OfType<int>().ToArray();
        if (elements.Distinct().Count() != elements.Length)
            throw new ArgumentException("Two of the faults change the same element, so they cannot both be made.", nameof(faults));
        return new WiringFault(all[0].Fault, changes);
    }
}
