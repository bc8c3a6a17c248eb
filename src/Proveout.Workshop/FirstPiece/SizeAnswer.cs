namespace Proveout.Workshop;

/// <summary>What the numbered measures say.</summary>
internal sealed record SizeAnswer(PieceFindings Findings, IReadOnlyList<PieceLengthView> Lengths, IReadOnlyList<PieceDoubtView> Doubts);
