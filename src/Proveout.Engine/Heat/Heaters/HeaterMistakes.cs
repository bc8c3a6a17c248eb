using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>Every plausible mistake with a heater that a warm-up shows.</summary>
internal static class HeaterMistakes
{
    private const string OtherPower = "other-power";
    private const string Print = "the print on the heater; its resistance, measured dead";

    public static IEnumerable<HeaterMistake> Of(HeaterDesign design) => [.. OfPower(design), .. OfSensor(design), .. OfLoss(design), .. OfSwitch(design)];

    private static IEnumerable<HeaterMistake> OfPower(HeaterDesign design)
    {
        yield return new("power-fourfold", "The heater gives four times its power: one for half the voltage is fitted.", Severity.Fire, "It glows, and outruns the controller.", 0.01, Print, WithPower(design, 4)) { Kind = OtherPower };
        yield return new("power-double", "A heater of twice the power is fitted.", Severity.Damage, "Supply and switch are overloaded, and it overshoots.", 0.01, Print, WithPower(design, 2)) { Kind = OtherPower };
        yield return new("power-half", "The heater gives half its power: one of half the power is fitted, one of its elements is open, or its switch passes every other half-wave only.", Severity.DoesNotWork, "It warms up too slowly, or not to its target.", 0.01, "the print on the heater; its resistance, measured dead: when that is right, the switch or the time base of its output", WithPower(design, 0.5)) { Kind = OtherPower };
        yield return new("power-quarter", "The heater gives a quarter of its power: one for twice the voltage is fitted.", Severity.DoesNotWork, "It never reaches its target.", 0.01, Print, WithPower(design, 0.25)) { Kind = OtherPower };
        yield return new("heater-open", "The heater's circuit is open.", Severity.DoesNotWork, "It stays cold.", 0.02, "its resistance, measured dead", design with { Watts = new(0, 0) });
        yield return new(
            "heater-off-body", "The heater has come off what it heats, or its screw is loose.", Severity.Fire, "It gets far hotter than what it heats, and burns out or burns.", 0.02, "tug at it when cold",
            design with { Watts = design.Watts.Times(new Between(0.4, 0.8)) });
    }

    private static IEnumerable<HeaterMistake> OfSensor(HeaterDesign design)
    {
        yield return new(
            "sensor-out", "The sensor has fallen out of what is heated.", Severity.Fire, "The controller heats on at full power while it shows too little.", 0.02, "tug at the sensor when cold",
            design with { SensorLagSeconds = design.SensorLagSeconds.Times(new Between(4, 20)), SeenShare = new(0.05, 0.6) });
        yield return new(
            "sensor-loose", "The sensor sits loosely.", Severity.Damage, "What is heated is hotter than is shown.", 0.04, "tug at the sensor when cold; a second thermometer",
            design with { SensorLagSeconds = design.SensorLagSeconds.Times(new Between(2, 5)), SeenShare = new(0.75, 0.93) });
        yield return new(
            "sensors-exchanged", "This sensor's plug and that of another heater are exchanged.", Severity.Fire, "Each heater is led by the temperature of the other.", 0.02, "warm one sensor between two fingers",
            design)
        {
            IsSeenElsewhere = true,
        };
    }

    private static IEnumerable<HeaterMistake> OfLoss(HeaterDesign design)
    {
        yield return new(
            "insulation-missing", "Insulation or sock is missing.", Severity.DoesNotWork, "It needs more power than it should, and may not reach its target.", 0.03, "look",
            design with { Loss = Bare(design.Loss), LossShare = design.Loss is PlateLoss ? design.LossShare : design.LossShare.Times(new Between(1.5, 2.5)) });
        yield return new(
            "air-on-body", "A fan blows on what is heated.", Severity.DoesNotWork, "Its temperature sags while the fan runs.", 0.05, "a strip of paper beside it",
            design with { LossShare = design.LossShare.Times(new Between(1.8, 3.5)) });
    }

    private static IEnumerable<HeaterMistake> OfSwitch(HeaterDesign design)
    {
        yield return new("stuck-on", "The heater's switch conducts for good.", Severity.Fire, "It heats at full power as soon as it is energised.", 0.01, "a lamp or meter at its terminals", design)
        {
            HeatsWhenOff = true,
        };
    }

    private static HeaterDesign WithPower(HeaterDesign design, double factor) => design with { Watts = design.Watts.Times(factor) };

    private static IHeatLoss Bare(IHeatLoss loss) => loss is PlateLoss plate ? plate with { InsulationWattsPerSquareMetreKelvin = null } : loss;
}
