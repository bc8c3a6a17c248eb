using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>Turns what a machine file says of a heated body into the models of heater and sensor.</summary>
public static class HeatedBodies
{
    // Fibre or foam that bears the heat: 0.035 to 0.045 W/(m·K), common tables. Sheet, paint or oxide on the plate: emissivity 0.8, common tables.
    private const double InsulationConductivity = 0.04;
    private const double Emissivity = 0.8;

    // What nobody measured: resistance and mains to a tenth together; capacity to a twentieth for a plate that is drawn, a seventh for a block with its screws and sock.
    private const double UsualPowerShare = 0.1;
    private const double PlateShare = 0.05;
    private const double BlockShare = 0.15;
    private static readonly Between LossShare = new(0.8, 1.25);
    private static readonly Between LagShare = new(0.6, 1.5);
    private static readonly Between Room = new(18, 26);
    private const double PlateLagSeconds = 10;
    private const double BlockLagSeconds = 5;
    private const double UsualPullUpShare = 0.01;

    /// <summary>The heater of a body.</summary>
    /// <param name="body">A body that was read without a problem.</param>
    public static HeaterDesign HeaterOf(HeatedBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        var (uptake, loss) = body.Plate is { Depth: { } thickness } plate ? OfPlate(plate.Width.Meters, plate.Height.Meters, thickness.Meters, body.Insulation?.Meters) : OfBlock(body);
        return new HeaterDesign(
            body.Name,
            Between.Around((double)body.Power.Watts, body.PowerTolerance?.DecimalFractions ?? UsualPowerShare),
            uptake,
            loss,
            LossShare,
            LagShare.Times(body.Lag?.Seconds ?? (body.Plate is null ? BlockLagSeconds : PlateLagSeconds)),
            Room,
            body.Target.DegreesCelsius);
    }

    /// <summary>The sensor of a body, with its input.</summary>
    public static SensorChannel SensorOf(HeatedBody body)
    {
        ArgumentNullException.ThrowIfNull(body);
        return new(SensorTypes.Find(body.Sensor)!, new SensorInput(body.PullUp.Ohms, UsualPullUpShare), body.Target.DegreesCelsius);
    }

    /// <summary>Power over area of a plate in W/cm²; null for a block.</summary>
    public static double? WattsPerSquareCentimetre(HeatedBody body) =>
        body.Plate is { } plate ? (double)body.Power.Watts / (plate.Width.Centimeters * plate.Height.Centimeters) : null;

    private static (Between Uptake, IHeatLoss Loss) OfPlate(double width, double depth, double thickness, double? insulation) =>
        (Between.Around(HeaterDesign.OfAluminiumPlate(width, depth, thickness), PlateShare), new PlateLoss(width, depth, thickness, Emissivity, InsulationConductivity / insulation));

    private static (Between Uptake, IHeatLoss Loss) OfBlock(HeatedBody body) =>
        (Between.Around(body.Uptake!.Value.JoulesPerKelvin, BlockShare), new LumpedLoss(body.Loss!.Value.WattsPerKelvin));
}
