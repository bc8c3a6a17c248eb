using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>What may be answered when a part is looked for in the parcel.</summary>
public static class Arrivals
{
    /// <summary>It is there and as the machine file says.</summary>
    public const string Got = "got";

    /// <summary>It is not there.</summary>
    public const string Missing = "missing";

    /// <summary>Another one is there.</summary>
    public const string Different = "different";

    /// <summary>Every answer.</summary>
    public static IReadOnlyList<string> Answers { get; } = [Got, Missing, Different];

    internal static string Of(PartArrival arrival) => arrival switch
    {
        PartArrival.Got => Got,
        PartArrival.Missing => Missing,
        _ => Different,
    };

    internal static PartArrival? Read(string answer) => answer switch
    {
        Got => PartArrival.Got,
        Missing => PartArrival.Missing,
        Different => PartArrival.Different,
        _ => null,
    };

    /// <summary>What the record says of a part that did not come as it should; null for one that did.</summary>
    internal static string? Words(PartReceived received) => received.Arrival switch
    {
        PartArrival.Got => null,
        PartArrival.Missing => received.Note.Length > 0 ? $"Did not come: {received.Note}" : "Did not come.",
        _ => $"Another one came: {received.Note}",
    };
}
