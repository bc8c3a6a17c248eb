namespace Proveout.Workshop;

/// <summary>Settings of a heater's controller, in the forms that controllers ask for.</summary>
/// <param name="Gain">Kc of the standard form, full output (1) for each kelvin.</param>
/// <param name="IntegralSeconds">Ti in seconds.</param>
/// <param name="DerivativeSeconds">Td in seconds.</param>
/// <param name="Parallel">Kp, Ki in 1/s and Kd in s of the parallel form, for an output from 0 to each of some numbers.</param>
/// <param name="WorstSensitivity">Largest Ms within all tolerances.</param>
/// <param name="WorstOvershootKelvin">Largest overshoot within all tolerances.</param>
/// <param name="SettledSeconds">When it stays within 1 K; null when it does not in twice the longest warm-up.</param>
/// <param name="Response">Warm-up in the middle of the tolerances: time in seconds, what is shown in °C, output in percent.</param>
public sealed record ControllerView(
    double Gain,
    double IntegralSeconds,
    double DerivativeSeconds,
    IReadOnlyList<ParallelSettings> Parallel,
    double WorstSensitivity,
    double WorstOvershootKelvin,
    double? SettledSeconds,
    IReadOnlyList<ResponsePoint> Response);
