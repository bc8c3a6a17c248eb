namespace Proveout.Engine.Electrical;

/// <summary>Chooses the pairs of places worth measuring while one control is operated: only those that it decides, across its contacts.</summary>
internal static class ContactPairs
{
    /// <summary>The pairs.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="conducts">Which elements carry current in this state.</param>
    /// <param name="places">The nodes that a lead can touch.</param>
    /// <param name="operated">The control.</param>
    public static IReadOnlyCollection<(int A, int B)> Of(WiringNetwork wiring, Func<NetworkElement, bool> conducts, ProbePlaces places, OperatedControl operated)
    {
        var walk = new MetalWalk(wiring, conducts, places);
        var pairs = new List<(int A, int B)>();
        foreach (var contact in operated.ContactsIn(wiring))
            foreach (var one in EndsOf(contact.A))
                foreach (var two in EndsOf(contact.B))
                    if (one != two && !pairs.Contains((one, two)) && !pairs.Contains((two, one)))
                        pairs.Add((one, two));
        return pairs;

        // A place near the contact, and the one farthest from that.
        IEnumerable<int> EndsOf(int node) =>
            (places.Holds(node) ? node : walk.FirstPlaceWith(node)) is { } near ? new[] { near, walk.FarthestFrom(near) }.Distinct() : [];
    }
}
