namespace Proveout.Workshop;

/// <summary>What was learned from notes and figures.</summary>
/// <param name="Belts">One span, or left and right.</param>
/// <param name="Pair">How the two compare; null for one span.</param>
/// <param name="Target">How the spans stand to the target; empty without one.</param>
/// <param name="Turns">How far to turn, a sentence for each span; empty when nothing is known of the screw.</param>
public sealed record SoundingView(
    IReadOnlyList<SoundedBelt> Belts, PairView? Pair, IReadOnlyList<TargetView> Target, IReadOnlyList<string> Turns)
{
    /// <summary>True when everything that was asked is surely as it should be.</summary>
    public bool IsFine => Pair is null or { Verdict: "equal" } && Target.All(target => target.Verdict == "right");
}

/// <summary>One span.</summary>
/// <param name="Name"><c>span</c>, <c>left belt</c> or <c>right belt</c>.</param>
/// <param name="Note">Its note, with what was heard.</param>
/// <param name="Force">Its force; null when length or mass is not known.</param>
/// <param name="Remarks">What to mind, a sentence each.</param>
/// <param name="Plots">Wave and spectrum; empty for a typed note.</param>
public sealed record SoundedBelt(string Name, NoteView Note, FigureView? Force, IReadOnlyList<string> Remarks, IReadOnlyList<PlotView> Plots);

/// <summary>A figure with its expanded uncertainty (coverage factor 2).</summary>
/// <param name="Value">Best estimate.</param>
/// <param name="Expanded">Expanded uncertainty.</param>
/// <param name="Words">Both, with the digits that they are worth and the unit.</param>
public sealed record FigureView(double Value, double Expanded, string Words);

/// <summary>A note.</summary>
/// <param name="Frequency">In Hz.</param>
/// <param name="Confidence">From 0.5 to 1; null for a typed note.</param>
/// <param name="Plucks">Plucks that agree; 0 for a typed note.</param>
/// <param name="Inharmonicity">B; null for a typed note.</param>
/// <param name="Partials">Frequencies of the tones that were matched, in Hz, by their number.</param>
public sealed record NoteView(FigureView Frequency, double? Confidence, int Plucks, double? Inharmonicity, IReadOnlyDictionary<int, double> Partials);

/// <summary>How two belts compare.</summary>
/// <param name="DifferencePercent">Force of the left over the right, in % of their mean.</param>
/// <param name="Verdict"><c>equal</c>, <c>left-tighter</c>, <c>right-tighter</c> or <c>cannot-tell</c>.</param>
/// <param name="Sentence">The same in a sentence, with what to do.</param>
public sealed record PairView(FigureView DifferencePercent, string Verdict, string Sentence);

/// <summary>How a span stands to the target.</summary>
/// <param name="Belt">Which span.</param>
/// <param name="Newtons">The target.</param>
/// <param name="Frequency">The note that it would sound.</param>
/// <param name="Verdict"><c>right</c>, <c>too-loose</c>, <c>too-tight</c> or <c>cannot-tell</c>.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record TargetView(string Belt, double Newtons, FigureView Frequency, string Verdict, string Sentence);
