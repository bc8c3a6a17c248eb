namespace Proveout.Workshop;

/// <summary>What a person brings to learn how square a frame is.</summary>
/// <param name="Typed">Figures by the names of <see cref="FrameFields"/>.</param>
/// <param name="Rail">Dial readings along a rail: a table with <c>position</c> and <c>reading</c>; null without.</param>
public sealed record FrameRequest(IReadOnlyDictionary<string, string> Typed, NamedText? Rail)
{
    /// <summary>What was seen, or read at a check, by the identifier of the check; empty when nobody said anything.</summary>
    public IReadOnlyDictionary<string, double> Seen { get; init; } = new Dictionary<string, double>();
}
