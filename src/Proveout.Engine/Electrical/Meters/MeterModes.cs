namespace Proveout.Engine.Electrical;

/// <summary>The register of ways of measuring: a new one is one new record and one line here.</summary>
public static class MeterModes
{
    /// <summary>Every way of measuring.</summary>
    public static IReadOnlyList<MeterMode> All { get; } = [MeterMode.Resistance, MeterMode.FourWire, MeterMode.DiodeTest, MeterMode.Insulation];
}
