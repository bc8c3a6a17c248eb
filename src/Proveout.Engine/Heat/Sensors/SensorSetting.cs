namespace Proveout.Engine.Heat;

/// <summary>What a controller is told about a sensor.</summary>
/// <param name="Curve">The curve that it reckons with.</param>
/// <param name="PullUpOhms">The pull-up that it reckons with.</param>
public sealed record SensorSetting(IResistanceCurve Curve, double PullUpOhms)
{
    /// <summary>What the controller shows in °C when its input sees a resistance against a pull-up.</summary>
    /// <param name="ohms">What the input sees, above zero.</param>
    /// <param name="pullUpOhms">The pull-up that is really there.</param>
    /// <remarks>It knows their ratio only, and multiplies by the pull-up that it was told.</remarks>
    public double ShownAt(double ohms, double pullUpOhms) => Curve.CelsiusAt(ohms * PullUpOhms / pullUpOhms);

    /// <summary>What its input sees in ohms when it shows a temperature.</summary>
    public double OhmsShownAs(double celsius, double pullUpOhms) => Curve.OhmsAt(celsius) * pullUpOhms / PullUpOhms;
}
