namespace Proveout.Workshop;

/// <summary>What was learned from recordings of acceleration.</summary>
/// <param name="Directions">Each axis, or each direction of a single recording.</param>
/// <param name="Sheet">Findings, steps and figures in words, for the record.</param>
public sealed record ResonanceStudyView(IReadOnlyList<ShakenDirection> Directions, SheetView Sheet);

/// <summary>One axis.</summary>
/// <param name="Name"><c>x</c>, <c>y</c> or <c>z</c>.</param>
/// <param name="Recording">Name of its recording.</param>
/// <param name="RateHertz">Samples a second.</param>
/// <param name="Seconds">Length of what was used.</param>
/// <param name="BinHertz">Distance of two frequencies of the spectrum.</param>
/// <param name="Segments">Segments that were averaged.</param>
/// <param name="Modes">Its resonances, highest peak first.</param>
/// <param name="Shapers">Every shaper, shortest first; empty without a resonance.</param>
/// <param name="Advice">Which one to use and why, in a sentence.</param>
/// <param name="Changes">What became of each resonance after a change; empty without a second recording.</param>
/// <param name="Plots">Spectrum and residual.</param>
public sealed record ShakenDirection(
    string Name,
    string Recording,
    double RateHertz,
    double Seconds,
    double BinHertz,
    int Segments,
    IReadOnlyList<ModeView> Modes,
    IReadOnlyList<ShaperView> Shapers,
    string Advice,
    IReadOnlyList<ModeChangeView> Changes,
    IReadOnlyList<PlotView> Plots);

/// <summary>A resonance.</summary>
/// <param name="Hertz">Undamped natural frequency.</param>
/// <param name="DampingRatio">Damping ratio; null when it cannot be told.</param>
/// <param name="Doubt">Why not; empty when it can.</param>
/// <param name="Acceleration">Root-mean-square acceleration of the peak, in m/s².</param>
/// <param name="TravelMicrometres">Root-mean-square travel of the peak, in µm.</param>
/// <param name="Blows">Blows whose ringing gave the damping; 0 when the width of the peak did.</param>
public sealed record ModeView(FigureView Hertz, FigureView? DampingRatio, string Doubt, double Acceleration, double TravelMicrometres, int Blows);

/// <summary>A shaper and what it would do.</summary>
/// <param name="Name">Its short name in the literature, such as <c>ZVD</c>.</param>
/// <param name="FullName">Its name in words.</param>
/// <param name="Hertz">Frequency that it is made for.</param>
/// <param name="DampingRatio">Damping ratio that it is made for.</param>
/// <param name="Impulses">Shares and times.</param>
/// <param name="DurationMilliseconds">From the first impulse to the last.</param>
/// <param name="DelayMilliseconds">Mean delay.</param>
/// <param name="SpreadMilliseconds">Spread of the impulses about it.</param>
/// <param name="ResidualPercent">Vibration left at the worst place inside uncertainties and wandering, rounded up.</param>
/// <param name="SpectrumPercent">Root-mean-square acceleration of the measured spectrum that is left.</param>
/// <param name="HighestAcceleration">Highest acceleration for the corner error, in m/s², rounded down.</param>
/// <param name="RoundingMicrometres">Corner error of the corner speed alone, in µm, rounded up.</param>
/// <param name="IsBest">True for the one to use.</param>
public sealed record ShaperView(
    string Name,
    string FullName,
    double Hertz,
    double DampingRatio,
    IReadOnlyList<(double Share, double Milliseconds)> Impulses,
    double DurationMilliseconds,
    double DelayMilliseconds,
    double SpreadMilliseconds,
    double ResidualPercent,
    double SpectrumPercent,
    double HighestAcceleration,
    double RoundingMicrometres,
    bool IsBest);

/// <summary>What became of a resonance.</summary>
/// <param name="Place"><c>higher</c>, <c>lower</c>, <c>same</c>, <c>gone</c> or <c>new</c>.</param>
/// <param name="Strength"><c>grown</c>, <c>shrunk</c>, <c>same</c> or <c>cannot-tell</c>.</param>
/// <param name="RiseHertz">By how much its frequency rose; null when there are not two.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record ModeChangeView(string Place, string Strength, FigureView? RiseHertz, string Sentence);
