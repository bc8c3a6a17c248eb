namespace Proveout.Engine.Machine;

/// <summary>Collects what is wrong while files are read.</summary>
/// <remarks>
/// A mend is worked out only for the problems that are shown: looking for the nearest spelling of thousands of words would take long.
/// </remarks>
internal sealed class Problems
{
    /// <summary>How many are shown; after so many a person mends the first and tries again.</summary>
    public const int MostShown = 100;

    private readonly List<(string Rule, SourcePlace Place, string Message, Func<string> Mend)> _found = [];
    private readonly Dictionary<string, int> _fileOrder = new(StringComparer.Ordinal);

    public bool Any => _found.Count > 0;

    /// <summary>Begins a file: its problems come after those of the files before it.</summary>
    public void BeginFile(string file) => _fileOrder.TryAdd(file, _fileOrder.Count);

    public void Add(string rule, SourcePlace place, string message, string mend) => Add(rule, place, message, () => mend);

    public void Add(string rule, SourcePlace place, string message, Func<string> mend) => _found.Add((rule, place, message, mend));

    /// <summary>Adds that a name is not one of those that are valid.</summary>
    /// <param name="rule">Identifier of the rule.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="wrong">The name.</param>
    /// <param name="what">What it is not, such as <c>a terminal of `X1`</c>.</param>
    /// <param name="valid">The valid names.</param>
    public void AddUnknown(string rule, SourcePlace place, string wrong, string what, IReadOnlyCollection<string> valid) =>
        Add(rule, place, $"{Quote.Of(wrong)} is not {what}.", () => Spelling.Hint(wrong, valid));

    /// <summary>The first problems in file order, and a closing sentence when there are more than are shown.</summary>
    public IReadOnlyList<Diagnostic> ToDiagnostics()
    {
        var shown = _found
            .OrderBy(problem => _fileOrder.GetValueOrDefault(problem.Place.File))
            .ThenBy(problem => problem.Place.Line)
            .ThenBy(problem => problem.Place.Column)
            .Take(MostShown)
            .Select(problem => new Diagnostic(problem.Rule, problem.Place, problem.Message, problem.Mend()))
            .ToList();
        if (_found.Count > MostShown)
            shown.Add(Rest(shown[^1].Place.File));
        return shown;
    }

    private Diagnostic Rest(string file) => new(
        "too-many",
        new(file, 0, 0),
        $"There are {_found.Count - MostShown} more problems.",
        "Mend those above first, and read the file again.");
}
