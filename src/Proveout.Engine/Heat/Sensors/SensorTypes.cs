namespace Proveout.Engine.Heat;

/// <summary>The kinds of sensor that are met in machines that heat, and may be taken for each other; values are common practice.</summary>
public static class SensorTypes
{
    /// <summary>Every kind.</summary>
    public static IReadOnlyList<SensorType> All { get; } =
    [
        SensorType.Ntc("ntc-100k-3950", 100e3, 3950),
        SensorType.Ntc("ntc-100k-4267", 100e3, 4267),
        SensorType.Ntc("ntc-10k-3950", 10e3, 3950),
        SensorType.Ntc("ntc-10k-3435", 10e3, 3435),
        SensorType.Platinum("pt1000", 1000),
        SensorType.Platinum("pt100", 100),
    ];

    /// <summary>The kind with an identifier; null when there is none.</summary>
    public static SensorType? Find(string id) => All.FirstOrDefault(type => type.Id == id);
}
