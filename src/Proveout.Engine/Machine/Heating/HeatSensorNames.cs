namespace Proveout.Engine.Machine;

/// <summary>Kinds of temperature sensor that a machine file may name; what each is stands with the model of heat.</summary>
public static class HeatSensorNames
{
    /// <summary>Every name.</summary>
    public static IReadOnlyList<string> All { get; } = ["ntc-100k-3950", "ntc-100k-4267", "ntc-10k-3950", "ntc-10k-3435", "pt1000", "pt100"];
}
