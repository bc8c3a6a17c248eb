namespace Proveout.Workshop;

/// <summary>What to watch, prove and look at again, from the first run on.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Fingerprint">Fingerprint of its file.</param>
/// <param name="Items">What to look at, in order.</param>
public sealed record AcceptanceView(MachineSummary Machine, string Fingerprint, IReadOnlyList<AcceptanceItem> Items)
{
    /// <summary>What can hurt, before each phase.</summary>
    public static IReadOnlyList<string> CautionsOf(AcceptancePhase phase) => phase is AcceptancePhase.FirstRun or AcceptancePhase.Protection or AcceptancePhase.Soak
        ? Running
        : Isolated;

    private static IReadOnlyList<string> Running { get; } =
    [
        "The machine is energised, hot and moving. Stay beside it, a hand at its stop or plug; hands, hair and cables out of reach of what moves; plate and nozzle burn.",
        "At smell, smoke, a bang or a tingle pull the mains plug and leave it out. A smoke alarm belongs in the room; nobody leaves before the soak has passed.",
        "Who may work on mains is ruled where you live: local codes and licensed practice come first.",
    ];

    private static IReadOnlyList<string> Isolated { get; } =
    [
        "Isolate first: plug pulled and in sight; wait five minutes before touching the supply; let plate and nozzle cool; block what can drop.",
        "Who may work on mains is ruled where you live: local codes and licensed practice come first.",
    ];
}
