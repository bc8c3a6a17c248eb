namespace Proveout.Publish.Schedules;

/// <summary>All schedules of a machine, with what stands at their head.</summary>
/// <param name="Machine">Name of the machine.</param>
/// <param name="Summary">What it is.</param>
/// <param name="Fingerprint">Fingerprint of the machine file that they follow from.</param>
/// <param name="Cautions">What can hurt, shown before everything that is done.</param>
/// <param name="Schedules">The schedules.</param>
/// <param name="Labels">The labels.</param>
public sealed record ScheduleBook(
    string Machine, string Summary, string Fingerprint, IReadOnlyList<string> Cautions, IReadOnlyList<Schedule> Schedules, IReadOnlyList<WireLabel> Labels)
{
    /// <summary>What kind of lists they are, in a word or two.</summary>
    public string Kind { get; init; } = "Schedules";
}
