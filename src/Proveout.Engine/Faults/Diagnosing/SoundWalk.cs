namespace Proveout.Engine.Faults;

/// <summary>The order in which a machine is checked by worth while every reading passes.</summary>
internal static class SoundWalk
{
    /// <summary>Indices of the checks, until they surely catch every fault that any check surely catches.</summary>
    public static IReadOnlyList<int> Of(FaultDictionary dictionary)
    {
        var readings = new List<Reading>();
        var done = new HashSet<string>(StringComparer.Ordinal);
        var order = new List<int>();
        var position = BenchPosition.Start;
        var uncaught = Enumerable.Range(0, dictionary.Faults.Count).Where(fault => dictionary.ChecksThatCatch(fault).Any()).ToList();
        while (uncaught.Count > 0 && NextCheck.Of(dictionary, Diagnosis.Of(dictionary, readings), done, position) is { } next)
        {
            var check = dictionary.Checks[next.Check];
            order.Add(next.Check);
            done.Add(check.Id);
            readings.Add(new(check.Id, RandomReading.Middle(check.Expectation)));
            position = BenchPosition.After(check);
            uncaught.RemoveAll(fault => dictionary.IsSurelyCaught(fault, next.Check));
        }

        // A mistake so rare that no check after it is worth its time is looked for all the same.
        order.AddRange(uncaught.Select(fault => dictionary.ChecksThatCatch(fault).First()).Distinct().ToArray());
        return order;
    }
}
