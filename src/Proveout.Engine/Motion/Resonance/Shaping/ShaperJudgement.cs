namespace Proveout.Engine.Motion;

/// <summary>What a shaper would do to a machine as it was measured.</summary>
/// <param name="Shaper">The shaper.</param>
/// <param name="Residual">Vibration left, as a share, at the worst place inside the uncertainties of frequency and damping.</param>
/// <param name="SpectrumShare">Root-mean-square acceleration of the measured spectrum that is left, as a share.</param>
/// <param name="HighestAcceleration">The highest acceleration for the corner error that is asked, in m/s².</param>
/// <param name="RoundingAtOne">Distance from the corner for each m/s² of acceleration, without a speed kept, in m.</param>
public sealed record ShaperJudgement(InputShaper Shaper, double Residual, double SpectrumShare, double HighestAcceleration, double RoundingAtOne);
