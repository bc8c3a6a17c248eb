namespace Proveout.Workshop;

/// <summary>What a person brings to learn how square a frame is.</summary>
/// <param name="Typed">Figures by the names of <see cref="FrameFields"/>.</param>
/// <param name="Rail">Dial readings along a rail: a table with <c>position</c> and <c>reading</c>; null without.</param>
public sealed record FrameRequest(IReadOnlyDictionary<string, string> Typed, NamedText? Rail)
{
    /// <summary>Corners in space as drawn, <c>name x y z</c> each, with a measured height behind; null without.</summary>
    public NamedText? Points { get; init; }

    /// <summary>Tape readings between them, <c>A-B 300.2</c> each; null without.</summary>
    public NamedText? Distances { get; init; }

    /// <summary>What was seen, or read at a check, by the identifier of the check; empty when nobody said anything.</summary>
    public IReadOnlyDictionary<string, double> Seen { get; init; } = new Dictionary<string, double>();
}
