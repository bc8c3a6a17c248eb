namespace Proveout.Workshop;

/// <summary>What a log of a heater says.</summary>
/// <param name="What">What the log is, a sentence each.</param>
/// <param name="Sheet">Figures, what they mean, what to do, what to mind.</param>
/// <param name="Diagnosis">What the readings of its warm-up say; null when there is no machine file to hold it against, or the log gives none of them.</param>
/// <param name="Settings">Settings of a controller; those to take stand first; empty when the log tells no process.</param>
/// <param name="Guard">What to set the guard to; null when the log does not tell.</param>
/// <param name="Compared">How it differs from an earlier log; empty without one.</param>
/// <param name="Plots">The log over what was expected, the fit, the loop to come.</param>
public sealed record HeatLogView(
    IReadOnlyList<string> What,
    SheetView Sheet,
    DiagnosisView? Diagnosis,
    IReadOnlyList<LoopSettingsView> Settings,
    GuardView? Guard,
    IReadOnlyList<ComparedView> Compared,
    IReadOnlyList<PlotView> Plots);

/// <summary>Settings of a controller by a rule.</summary>
/// <param name="Rule">Whose rule.</param>
/// <param name="IsRobust">True when Ms keeps within 1.8 for every process that the log allows.</param>
/// <param name="Gain">Kc of the standard form, full output (1) for each kelvin.</param>
/// <param name="IntegralSeconds">Ti in seconds.</param>
/// <param name="DerivativeSeconds">Td in seconds.</param>
/// <param name="Parallel">Kp, Ki in 1/s and Kd in s of the parallel form, for an output from 0 to each of some numbers.</param>
/// <param name="Sensitivity">Ms with the process as fitted.</param>
/// <param name="WorstSensitivity">Largest Ms with any process that the log allows.</param>
/// <param name="OvershootKelvin">How far a warm-up goes beyond its target; null when it cannot be held.</param>
/// <param name="SettledSeconds">When it stays within 1 K; null when it does not, or cannot be held.</param>
public sealed record LoopSettingsView(
    string Rule,
    bool IsRobust,
    double Gain,
    double IntegralSeconds,
    double DerivativeSeconds,
    IReadOnlyList<ParallelSettings> Parallel,
    double Sensitivity,
    double WorstSensitivity,
    double? OvershootKelvin,
    double? SettledSeconds);

/// <summary>A figure of two logs.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Before">In the earlier log.</param>
/// <param name="After">In this one.</param>
/// <param name="Difference">This less the earlier.</param>
/// <param name="IsBeyondNoise">True when they differ by more than their expanded uncertainty.</param>
public sealed record ComparedView(string Name, FigureView Before, FigureView After, FigureView Difference, bool IsBeyondNoise);
