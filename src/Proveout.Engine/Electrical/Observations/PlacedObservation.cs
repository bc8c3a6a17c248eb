using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An observation at one place, with the things to look at there.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="Place">The place.</param>
/// <param name="Newtons">Force that each thing there must hold; null for one that is answered by yes or no.</param>
/// <param name="Sites">The things.</param>
internal sealed record PlacedObservation(Observation Observation, string Place, double? Newtons, IReadOnlyList<Site> Sites)
{
    // A joint that slips is read below the force that a sound one holds; a tenth between them, for the hand on a spring balance.
    private const double SlipsBelow = 0.9;
    private const int MostNamed = 12;

    /// <summary>Identifier of the set-up that it belongs to.</summary>
    public string SetUpId => Observation.IsLive ? "on" : $"round-{Plain(Place)}";

    /// <summary>Unit of what is only good or not.</summary>
    public const string YesOrNo = "yes 1, no 0";

    /// <summary>What a wrong thing there shows.</summary>
    public ReadingInterval Wrong => Newtons is { } force ? new(0, force * SlipsBelow) : new(0, 0);

    /// <summary>The check.</summary>
    public Check Check => new(
        FormattableString.Invariant($"{Observation.Name}-{Plain(Place)}{(Newtons is { } force ? $"-{force}" : "")}"),
        Observation.Kind,
        SetUpId,
        FormattableString.Invariant($"{Observation.Title}: {Place}{(Newtons is { } held ? $", {held} N" : "")}"),
        $"{Observation.Instruction} Here: {Named()}.",
        [],
        Newtons is null ? YesOrNo : "N",
        Newtons is { } least ? new(least, ReadingInterval.OverRange) : new(1, 1),
        $"Good: {Observation.Good} Bad: {Observation.Bad} Criterion: {Observation.Criterion} ({Observation.Source}).",
        Observation.Seconds * Sites.Count);

    /// <summary>The places of an observation on a machine, each once; for a tug, each force once.</summary>
    public static IEnumerable<PlacedObservation> Of(Observation observation, ObservationSites sites) =>
        observation.Where(sites)
            .GroupBy(site => (Place: Plain(site.Place), Force: observation.Name == "tug" ? site.Newtons : null))
            .Select(group => new PlacedObservation(observation, group.First().Place, group.Key.Force, [.. group]));

    /// <summary>The mistakes that it shows here, of the kinds that the machine's file leaves on.</summary>
    public IEnumerable<Fault> Mistakes(MachineDesign design) =>
        from mistake in Observation.Mistakes
        where design.IsImagined(mistake.Kind)
        from site in Sites
        where mistake.Applies?.Invoke(site) ?? true
        select new Fault(
            $"{mistake.Kind}:{site.Subject}",
            mistake.Kind,
            Sentence(mistake.Sentence, site),
            SubjectsOf(site),
            mistake.Severity,
            mistake.Consequence,
            design.PriorOf(mistake.Kind) ?? mistake.Prior,
            $"{Capital.Of(Observation.Kind)}: {Observation.Title}; good is {Observation.Criterion}");

    private static ValueList<string> SubjectsOf(Site site) =>
        [.. new[] { site.Conductor?.Id, site.Part?.Designation, site.Route?.Name }.OfType<string>().DefaultIfEmpty(site.Subject)];

    private static string Sentence(string pattern, Site site)
    {
        var text = pattern.Replace("{0}", site.Text, StringComparison.Ordinal);
        return Capital.Of(text);
    }

    private string Named()
    {
        var named = string.Join("; ", Sites.Take(MostNamed).Select(site => site.Text));
        return Sites.Count > MostNamed ? FormattableString.Invariant($"{named}; and {Sites.Count - MostNamed} more") : named;
    }

    private static string Plain(string place)
    {
        var letters = place.ToLowerInvariant().Select(letter => char.IsLetterOrDigit(letter) ? letter : '-');
        return string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }
}
