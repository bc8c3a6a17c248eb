using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Says what to watch, prove and look at again, from the first run on.</summary>
public static class AcceptanceList
{
    private static readonly IAcceptanceSource[] Sources = [new HeatAcceptance(), new MotionAcceptance(), new SoakAcceptance(), new AirAcceptance(), new WiringAcceptance()];

    /// <summary>The list of a machine; takes a second or two.</summary>
    public static AcceptanceView Of(LoadedMachine machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        var known = new AcceptanceCase(
            machine.Design,
            new LiveModel(new WiringContext(WiringNetworkBuilder.Build(machine.Design))),
            HeatPrediction.Of(machine.Summary, machine.Design),
            AirPrediction.Of(machine.Summary, machine.Design));
        return new(machine.Summary, machine.Fingerprint, [.. Sources.SelectMany(source => source.Of(known)).OrderBy(item => item.Phase)]);
    }
}
