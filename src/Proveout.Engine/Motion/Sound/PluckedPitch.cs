namespace Proveout.Engine.Motion;

/// <summary>What was found in a recording of a plucked span.</summary>
/// <param name="FundamentalHertz">The fundamental that sounds.</param>
/// <param name="StandardHertz">Its standard uncertainty (JCGM 100).</param>
/// <param name="Inharmonicity">How stiff the span is against its tension: B in f(n) = n F sqrt(1 + B n²).</param>
/// <param name="StandardInharmonicity">Its standard uncertainty.</param>
/// <param name="Partials">Tones that were matched: number, counted from 1 for the fundamental, and frequency.</param>
/// <param name="Confidence">From 0 to 1; below <see cref="PitchFinder.LeastConfidence"/> nothing is claimed.</param>
/// <param name="StartSeconds">Where the stretch that was listened to begins.</param>
/// <param name="EndSeconds">Where it ends.</param>
/// <param name="PluckCount">How many plucks agree.</param>
/// <param name="Doubts">What speaks against it or weakens it, a sentence each.</param>
public sealed record PluckedPitch(
    double FundamentalHertz,
    double StandardHertz,
    double Inharmonicity,
    double StandardInharmonicity,
    IReadOnlyList<SoundedPartial> Partials,
    double Confidence,
    double StartSeconds,
    double EndSeconds,
    int PluckCount,
    IReadOnlyList<string> Doubts)
{
    /// <summary>Expanded uncertainty, coverage factor 2 (about 95 %).</summary>
    public double ExpandedHertz => 2 * StandardHertz;
}

/// <summary>A tone of the span.</summary>
/// <param name="Number">1 for the fundamental.</param>
/// <param name="Hertz">Frequency.</param>
public readonly record struct SoundedPartial(int Number, double Hertz);
