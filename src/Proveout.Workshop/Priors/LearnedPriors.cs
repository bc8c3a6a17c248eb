using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>How often each kind of mistake is made, as the builds of a workshop teach it.</summary>
/// <remarks>
/// The number found of a kind is Poisson with mean factor x expected, and the factor on the assumed rates is Gamma(1, 1) before anything is
/// known: mean 1 and as wide as its mean, for the assumed rates are orders of magnitude, worth as much as one mistake seen. After x found
/// where E were expected it is Gamma(1 + x, 1 + E) with mean (1 + x) / (1 + E): the conjugate update of a Poisson rate with exposure
/// (Gelman et al., Bayesian Data Analysis, 3rd edition, 2013, section 2.6). A kind shares one factor over all machines.
/// </remarks>
public sealed class LearnedPriors
{
    private const double Strength = 1;

    // Odds are taken of priors, and nothing is learned that well.
    private const double HighestPrior = 0.5;

    private readonly Dictionary<string, double> _found = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _expected = new(StringComparer.Ordinal);

    private LearnedPriors(IEnumerable<BuildExperience> builds)
    {
        foreach (var build in builds)
        {
            foreach (var (kind, number) in build.Found)
                _found[kind] = _found.GetValueOrDefault(kind) + number;
            foreach (var (kind, number) in build.Expected)
                _expected[kind] = _expected.GetValueOrDefault(kind) + number;
        }
    }

    /// <summary>Nothing learned: the assumed rates stand.</summary>
    public static LearnedPriors Nothing { get; } = new([]);

    /// <summary>What builds teach. Where none of them records a mistake found, nobody may have recorded any, and nothing is learned.</summary>
    public static LearnedPriors Of(IReadOnlyCollection<BuildExperience> builds) =>
        builds.Any(build => build.Found.Count > 0) ? new(builds) : Nothing;

    /// <summary>What the assumed rate of a kind is to be multiplied by.</summary>
    public double FactorOf(string kind) => (Strength + _found.GetValueOrDefault(kind)) / (Strength + _expected.GetValueOrDefault(kind));

    /// <summary>The kinds of which anything was found or looked for, those found most first.</summary>
    public IReadOnlyList<LearnedKind> Kinds =>
    [
        .. _expected.Keys.Union(_found.Keys)
            .Select(kind => new LearnedKind(kind, (int)_found.GetValueOrDefault(kind), _expected.GetValueOrDefault(kind), FactorOf(kind)))
            .OrderByDescending(kind => kind.Found)
            .ThenBy(kind => kind.Kind, StringComparer.Ordinal),
    ];

    /// <summary>The learned rate of a fault.</summary>
    public double RateOf(Fault fault) => Math.Min(HighestPrior, fault.Prior * FactorOf(fault.Kind));

    /// <summary>The dictionary with learned rates.</summary>
    public FaultDictionary Applied(FaultDictionary dictionary) => this == Nothing ? dictionary : dictionary.WithPriors(RateOf);

    /// <summary>The machine with learned rates; its plan stays, for rates decide no coverage.</summary>
    public PlannedMachine Applied(PlannedMachine planned) => this == Nothing ? planned : planned with { Dictionary = Applied(planned.Dictionary) };
}
