namespace Proveout.Engine.Faults;

/// <summary>For every check its classes of intervals, and for every fault the class at each check that it changes.</summary>
internal sealed class ShownTable
{
    private static readonly double Misread = DiagnosisRates.Assumed.Misread;

    // Spread over both outcomes of a symptom, so that the wrong one gets half of it.
    private static readonly double WrongSymptoms = 2 * DiagnosisRates.Assumed.FalseSymptom;

    private readonly int[][] _classOf;

    private ShownTable(ShownClasses[] classes, int[][] classOf)
    {
        (Classes, _classOf) = (classes, classOf);
        First = new int[classes.Length + 1];
        for (var check = 0; check < classes.Length; check++)
            First[check + 1] = First[check] + classes[check].Count;
    }

    /// <summary>The classes of each check.</summary>
    public IReadOnlyList<ShownClasses> Classes { get; }

    /// <summary>Where the classes of each check begin when those of all checks stand in one row; one more for the end.</summary>
    public int[] First { get; }

    /// <summary>The class at each check that a fault changes, in the order of its response.</summary>
    public ReadOnlySpan<int> ClassesOf(int fault) => _classOf[fault];

    /// <summary>Sorts the intervals of every check into classes, on all processors.</summary>
    public static ShownTable Of(IReadOnlyList<Check> checks, FaultResponse[] responses)
    {
        int[][] classOf = [.. responses.Select(response => new int[response.Checks.Length])];
        var changing = new List<(int Fault, int Place)>[checks.Count];
        for (var check = 0; check < checks.Count; check++)
            changing[check] = [];
        for (var fault = 0; fault < responses.Length; fault++)
            for (var place = 0; place < responses[fault].Checks.Length; place++)
                changing[responses[fault].Checks[place]].Add((fault, place));
        var classes = new ShownClasses[checks.Count];
        Parallel.For(0, checks.Count, check =>
        {
            var isSymptom = Symptom.Is(checks[check]);
            var numbers = new Dictionary<ShownExtent, int> { [ShownExtent.Of(checks[check].Expectation, isSymptom)] = 0 };
            foreach (var (fault, place) in changing[check])
            {
                var extent = ShownExtent.Of(responses[fault].Intervals[place], isSymptom);
                if (!numbers.TryGetValue(extent, out var number))
                    numbers.Add(extent, number = numbers.Count);
                classOf[fault][place] = number;
            }

            classes[check] = new([.. numbers.OrderBy(item => item.Value).Select(item => item.Key)], isSymptom ? WrongSymptoms : Misread);
        });
        return new(classes, classOf);
    }
}
