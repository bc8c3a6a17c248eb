namespace Proveout.Engine.Heat;

/// <summary>A heater with what it heats and the sensor that tells of it, each quantity with its tolerance.</summary>
/// <param name="Name">What it is, such as <c>plate</c>.</param>
/// <param name="Watts">Power at full output, above zero.</param>
/// <param name="JoulesPerKelvin">Heat capacity of what is heated, above zero.</param>
/// <param name="Loss">What it loses.</param>
/// <param name="LossShare">Factor on the loss: correlations are right to a fifth.</param>
/// <param name="SensorLagSeconds">Time constant from what is heated to what is shown, above zero.</param>
/// <param name="AmbientCelsius">Temperature of the air around, and of everything at the start.</param>
/// <param name="TargetCelsius">Temperature that it is held at.</param>
public sealed record HeaterDesign(
    string Name, Between Watts, Between JoulesPerKelvin, IHeatLoss Loss, Between LossShare, Between SensorLagSeconds, Between AmbientCelsius, double TargetCelsius)
{
    /// <summary>Share of the rise of what is heated that the sensor comes to see: 1 for one that sits well.</summary>
    public Between SeenShare { get; init; } = new(0.97, 1);

    /// <summary>Standard deviation of what is shown around what is true, in K.</summary>
    public double NoiseKelvin { get; init; } = 0.1;

    /// <summary>The heater that shows most at any time while it warms up: most power, least to heat, least loss, quickest sensor.</summary>
    public HeaterTrial Warmest => new(Watts.High, JoulesPerKelvin.Low, Loss, LossShare.Low, SensorLagSeconds.Low, SeenShare.High, AmbientCelsius.High);

    /// <summary>The heater that shows least at any time while it warms up.</summary>
    public HeaterTrial Coldest => new(Watts.Low, JoulesPerKelvin.High, Loss, LossShare.High, SensorLagSeconds.High, SeenShare.Low, AmbientCelsius.Low);

    /// <summary>A heater somewhere between, each quantity at a share of its way from low to high.</summary>
    /// <param name="shares">Six numbers from 0 to 1.</param>
    public HeaterTrial At(ReadOnlySpan<double> shares) => new(
        Watts.At(shares[0]), JoulesPerKelvin.At(shares[1]), Loss, LossShare.At(shares[2]), SensorLagSeconds.At(shares[3]), SeenShare.At(shares[4]), AmbientCelsius.At(shares[5]));

    /// <summary>Joules for each kelvin of a plate of aluminium: 2700 kg/m³ and 897 J/(kg·K), common tables.</summary>
    public static double OfAluminiumPlate(double widthMetres, double depthMetres, double thicknessMetres) => widthMetres * depthMetres * thicknessMetres * 2700 * 897;
}
