using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What a conductor bears, and why.</summary>
/// <param name="Amperes">Capacity with everything counted.</param>
/// <param name="AloneAmperes">Capacity with nothing else loaded beside it.</param>
/// <param name="Method">Method of installation.</param>
/// <param name="Celsius">Temperature of the air around it.</param>
/// <param name="Circuits">Loaded circuits together.</param>
/// <param name="Route">The route where it bears least; null when it runs free.</param>
internal sealed record Bearing(double Amperes, double AloneAmperes, InstallationMethod Method, double Celsius, int Circuits, string? Route)
{
    /// <summary>The reasons in words.</summary>
    public string Words =>
        $"method {Method}, {ReviewContext.Number(Celsius)} °C{(Circuits > 1 ? $", {Circuits} loaded circuits in {Route}" : "")}";
}
