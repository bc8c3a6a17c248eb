namespace Proveout.Workshop;

/// <summary>Settings in parallel form.</summary>
/// <param name="FullOutput">What the controller calls full output.</param>
/// <param name="Proportional">Kp, output for each kelvin.</param>
/// <param name="Integral">Ki, output for each kelvin and second.</param>
/// <param name="Derivative">Kd, output for each kelvin in a second.</param>
public sealed record ParallelSettings(double FullOutput, double Proportional, double Integral, double Derivative);
