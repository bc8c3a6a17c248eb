using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Resonances, shapers and changes.</summary>
internal sealed record ResonanceShape(
    string Format, bool IsFine, IReadOnlyList<ShakenShape> Axes, IReadOnlyList<string> Findings, IReadOnlyList<string> Steps, IReadOnlyList<string> Remarks)
{
    public static ResonanceShape Of(ResonanceStudyView view) => new(
        "proveout-resonance 1", view.Sheet.IsFine, [.. view.Directions.Select(ShakenShape.Of)], view.Sheet.Findings, view.Sheet.Steps, view.Sheet.Remarks);
}

/// <summary>One axis.</summary>
internal sealed record ShakenShape(
    string Name,
    string Recording,
    double RateHertz,
    double Seconds,
    double BinHertz,
    int Segments,
    IReadOnlyList<ResonanceModeShape> Resonances,
    IReadOnlyList<InputShaperShape> Shapers,
    string Advice,
    IReadOnlyList<ResonanceChangeShape> Changes)
{
    public static ShakenShape Of(ShakenDirection direction) => new(
        direction.Name,
        direction.Recording,
        direction.RateHertz,
        direction.Seconds,
        direction.BinHertz,
        direction.Segments,
        [.. direction.Modes.Select(mode => new ResonanceModeShape(UncertainShape.Of(mode.Hertz), mode.DampingRatio is { } damping ? UncertainShape.Of(damping) : null, mode.Doubt, mode.Acceleration, mode.TravelMicrometres, mode.Blows))],
        [.. direction.Shapers.Select(InputShaperShape.Of)],
        direction.Advice,
        [.. direction.Changes.Select(change => new ResonanceChangeShape(change.Place, change.Strength, change.RiseHertz is { } rise ? UncertainShape.Of(rise) : null, change.Sentence))]);
}

/// <summary>A resonance.</summary>
internal sealed record ResonanceModeShape(UncertainShape FrequencyHertz, UncertainShape? DampingRatio, string Doubt, double Acceleration, double TravelMicrometres, int Blows);

/// <summary>A shaper.</summary>
internal sealed record InputShaperShape(
    string Name,
    bool IsBest,
    double FrequencyHertz,
    double DampingRatio,
    IReadOnlyList<ShaperImpulseShape> Impulses,
    double DurationMilliseconds,
    double DelayMilliseconds,
    double SpreadMilliseconds,
    double ResidualPercent,
    double SpectrumPercent,
    double HighestAcceleration,
    double RoundingMicrometres)
{
    public static InputShaperShape Of(ShaperView shaper) => new(
        shaper.Name,
        shaper.IsBest,
        shaper.Hertz,
        shaper.DampingRatio,
        [.. shaper.Impulses.Select(impulse => new ShaperImpulseShape(impulse.Share, impulse.Milliseconds))],
        shaper.DurationMilliseconds,
        shaper.DelayMilliseconds,
        shaper.SpreadMilliseconds,
        shaper.ResidualPercent,
        shaper.SpectrumPercent,
        shaper.HighestAcceleration,
        shaper.RoundingMicrometres);
}

/// <summary>An impulse of a shaper.</summary>
internal sealed record ShaperImpulseShape(double Share, double Milliseconds);

/// <summary>What became of a resonance.</summary>
internal sealed record ResonanceChangeShape(string Place, string Strength, UncertainShape? RiseHertz, string Sentence);
