namespace Proveout.Engine.Electrical;

/// <summary>Which observation shows the wiring mistakes that no reading surely catches.</summary>
/// <param name="Kind">Kind of mistake.</param>
/// <param name="Faults">How many of them no reading surely catches.</param>
/// <param name="Shown">How many of those an observation shows. Eyes and hands are not sure: this is no proof, but a list of where to look.</param>
/// <param name="Checks">Identifiers of the observations.</param>
public sealed record ObservationCoverage(string Kind, int Faults, int Shown, IReadOnlyList<string> Checks)
{
    /// <summary>The coverage of some mistakes, kind by kind.</summary>
    /// <param name="observations">The walk round the machine.</param>
    /// <param name="uncaught">Mistakes that no reading surely catches.</param>
    public static IReadOnlyList<ObservationCoverage> Of(ObservationCampaign observations, IEnumerable<WiringFault> uncaught) =>
    [
        .. uncaught
            .GroupBy(fault => fault.Fault.Kind)
            .Select(group => (group.Key, Showing: group.Select(observations.ShowingOf).ToArray()))
            .Select(kind => new ObservationCoverage(
                kind.Key,
                kind.Showing.Length,
                kind.Showing.Count(checks => checks.Count > 0),
                [.. kind.Showing.SelectMany(checks => checks.Select(check => check.Id)).Distinct()])),
    ];
}
