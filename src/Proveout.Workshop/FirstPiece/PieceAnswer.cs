namespace Proveout.Workshop;

/// <summary>What the first test piece says.</summary>
/// <param name="Sheet">Figures, findings and steps.</param>
/// <param name="Lengths">Each measured length: drawn, read, and what it should read after the steps; empty when none was read.</param>
/// <param name="Doubts">What the doubt of each figure is made of; empty when no length was read.</param>
/// <param name="Plot">The same as a plot; null when no length was read.</param>
public sealed record PieceAnswer(SheetView Sheet, IReadOnlyList<PieceLengthView> Lengths, IReadOnlyList<PieceDoubtView> Doubts, PlotView? Plot);

/// <summary>A measured length.</summary>
/// <param name="Number">Its number on the drawing.</param>
/// <param name="Words">What was measured.</param>
/// <param name="DrawnMm">As drawn.</param>
/// <param name="ReadMm">As read, without the known errors of calliper and warmth.</param>
/// <param name="After">What it should read after the steps.</param>
public sealed record PieceLengthView(int Number, string Words, double DrawnMm, double ReadMm, FigureView After);

/// <summary>What the doubt of a figure is made of.</summary>
/// <param name="Name">The figure.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Degrees">Effective degrees of freedom; 0 when all causes are taken as known.</param>
/// <param name="Causes">Causes with their standard uncertainty in that unit, the largest first.</param>
public sealed record PieceDoubtView(string Name, string Unit, double Degrees, IReadOnlyList<PieceCauseView> Causes);

/// <summary>A cause of doubt.</summary>
/// <param name="Cause">What it is.</param>
/// <param name="Standard">Standard uncertainty that it adds.</param>
/// <param name="Words">The same to two digits.</param>
public sealed record PieceCauseView(string Cause, double Standard, string Words);
