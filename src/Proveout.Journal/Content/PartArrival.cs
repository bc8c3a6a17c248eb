using System.Text.Json.Serialization;

namespace Proveout.Journal;

/// <summary>What came of a part; the stored names never change.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<PartArrival>))]
public enum PartArrival
{
    /// <summary>It is there and as the machine file says.</summary>
    [JsonStringEnumMemberName("got")]
    Got,

    /// <summary>It is not there.</summary>
    [JsonStringEnumMemberName("missing")]
    Missing,

    /// <summary>Another one is there.</summary>
    [JsonStringEnumMemberName("different")]
    Different,
}
