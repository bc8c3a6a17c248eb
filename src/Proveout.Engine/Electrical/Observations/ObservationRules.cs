namespace Proveout.Engine.Electrical;

/// <summary>The register of observations: a new one is one entry of a list here.</summary>
public static class ObservationRules
{
    /// <summary>Names of all observations, such as <c>terminals-read</c>.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Select(observation => observation.Name)];

    /// <summary>Kinds of mistakes that only an observation shows, each with its words and prior, in the order in which coverage is listed.</summary>
    public static IReadOnlyList<(string Kind, string Words, double Prior)> Mistakes { get; } =
        [.. All.SelectMany(observation => observation.Mistakes.Select(mistake => (mistake.Kind, mistake.Words, mistake.Prior)))];

    /// <summary>The kind of check that an observation is.</summary>
    /// <exception cref="InvalidOperationException">There is no such observation.</exception>
    public static string KindOf(string name) => All.Single(observation => observation.Name == name).Kind;

    /// <summary>Every observation, ends and plugs first, then mains, heat, boards, motion, ways.</summary>
    internal static IReadOnlyList<Observation> All =>
    [
        .. TerminationObservations.All,
        .. PlugObservations.All,
        .. MainsObservations.All,
        .. ProtectionObservations.All,
        .. HeatObservations.All,
        .. SupplyObservations.All,
        .. FanObservations.All,
        .. BoardObservations.All,
        .. MotorObservations.All,
        .. SwitchObservations.All,
        .. DataObservations.All,
        .. RoutingObservations.All,
    ];
}
