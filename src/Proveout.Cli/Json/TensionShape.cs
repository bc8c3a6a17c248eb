using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Tension by sound.</summary>
internal sealed record TensionShape(
    string Format, IReadOnlyList<SoundedBeltShape> Belts, BeltPairShape? Pair, IReadOnlyList<BeltTargetShape> Targets, IReadOnlyList<string> Turns, long? Kept)
{
    public static TensionShape Of(SoundingView view, long? kept) => new(
        "proveout-tension 1",
        [.. view.Belts.Select(SoundedBeltShape.Of)],
        view.Pair is { } pair ? new(UncertainShape.Of(pair.DifferencePercent), pair.Verdict, pair.Sentence) : null,
        [.. view.Target.Select(target => new BeltTargetShape(target.Belt, target.Newtons, UncertainShape.Of(target.Frequency), target.Verdict, target.Sentence))],
        view.Turns,
        kept);
}

/// <summary>One span.</summary>
internal sealed record SoundedBeltShape(
    string Name, UncertainShape FrequencyHertz, UncertainShape? ForceNewtons, double? Confidence, int Plucks, double? Inharmonicity, IReadOnlyList<PartialShape> Partials, IReadOnlyList<string> Remarks)
{
    public static SoundedBeltShape Of(SoundedBelt belt) => new(
        belt.Name,
        UncertainShape.Of(belt.Note.Frequency),
        belt.Force is { } force ? UncertainShape.Of(force) : null,
        belt.Note.Confidence,
        belt.Note.Plucks,
        belt.Note.Inharmonicity,
        [.. belt.Note.Partials.Select(partial => new PartialShape(partial.Key, partial.Value))],
        belt.Remarks);
}

/// <summary>A figure with its expanded uncertainty.</summary>
internal sealed record UncertainShape(double Value, double Expanded, string Words)
{
    public static UncertainShape Of(FigureView figure) => new(figure.Value, figure.Expanded, figure.Words);
}

/// <summary>A tone.</summary>
internal sealed record PartialShape(int Number, double Hertz);

/// <summary>How two belts compare.</summary>
internal sealed record BeltPairShape(UncertainShape DifferencePercent, string Verdict, string Sentence);

/// <summary>How a span stands to the target.</summary>
internal sealed record BeltTargetShape(string Belt, double Newtons, UncertainShape FrequencyHertz, string Verdict, string Sentence);
