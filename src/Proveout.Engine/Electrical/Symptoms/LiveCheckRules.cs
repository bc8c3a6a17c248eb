namespace Proveout.Engine.Electrical;

/// <summary>The register of symptoms and live readings: a new kind is one new file and one line here.</summary>
internal static class LiveCheckRules
{
    /// <summary>What a person sees, hears or feels.</summary>
    public static IReadOnlyList<ILiveCheckRule> Symptoms { get; } =
    [
        new ProtectionStaysIn(),
        new ResidualDeviceStaysIn(),
        new MetalDoesNotTingle(),
        new LoadWorks(),
        new MotorIsQuiet(),
        new MotorTurnsTheRightWay(),
        new LoadRests(),
        new LoadIsOffWithSwitch(),
        new StopTakesPower(),
        new StaysOffAfterStop(),
    ];

    /// <summary>What a meter reads on the energised machine.</summary>
    public static IReadOnlyList<ILiveCheckRule> Readings { get; } =
    [
        new MainsReadings(),
        new MetalReadings(),
        new SupplyReadings(),
        new BankReadings(),
        new OutputReadings(),
        new InputReadings(),
        new DropReadings(),
    ];
}
