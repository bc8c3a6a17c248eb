namespace Proveout.Workshop;

/// <summary>What the first test piece says.</summary>
/// <param name="Sheet">Figures, findings and steps.</param>
/// <param name="Lengths">Each measured length: drawn, read, and what it should read after the steps; empty when none was read.</param>
/// <param name="Plot">The same as a plot; null when no length was read.</param>
public sealed record PieceAnswer(SheetView Sheet, IReadOnlyList<PieceLengthView> Lengths, PlotView? Plot);

/// <summary>A measured length.</summary>
/// <param name="Number">Its number on the drawing.</param>
/// <param name="Words">What was measured.</param>
/// <param name="DrawnMm">As drawn.</param>
/// <param name="ReadMm">As read, without the known errors of calliper and warmth.</param>
/// <param name="After">What it should read after the steps.</param>
public sealed record PieceLengthView(int Number, string Words, double DrawnMm, double ReadMm, FigureView After);
