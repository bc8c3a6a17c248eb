namespace Proveout.Workshop;

/// <summary>What a person brings to learn what a log of a heater says.</summary>
/// <param name="Log">The log.</param>
/// <param name="Before">An earlier log of the same heater to compare with; null without.</param>
/// <param name="Body">Name of the heated body in the machine file; empty when there is one only, or the log's headings tell.</param>
/// <param name="Sensor">Heading of the temperature meant; empty likewise.</param>
/// <param name="Output">Heading of the output meant; empty likewise.</param>
/// <param name="Typed">Figures by the names of <see cref="HeatLogFields"/>.</param>
public sealed record HeatLogRequest(LogSource Log, LogSource? Before, string Body, string Sensor, string Output, IReadOnlyDictionary<string, string> Typed);
