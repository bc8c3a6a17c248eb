namespace Proveout.Publish.Drawings;

/// <summary>A flat shape with its numbered measures, in mm of its own plane.</summary>
/// <param name="Name">What stands below it.</param>
/// <param name="View">From where it is seen, in a second line.</param>
/// <param name="Lines">Outer line and holes.</param>
/// <param name="Measures">What is measured at it.</param>
public sealed record DrawnShape(string Name, string View, IReadOnlyList<IReadOnlyList<(double Across, double Up)>> Lines, IReadOnlyList<DrawnMeasure> Measures);

/// <summary>A measure between two sides.</summary>
/// <param name="Number">Its number.</param>
/// <param name="IsInside">True when jaws spread in a window, false when they close over material.</param>
/// <param name="From">Where it is taken on one side.</param>
/// <param name="To">Where on the other.</param>
/// <param name="Words">What to measure.</param>
public sealed record DrawnMeasure(int Number, bool IsInside, (double Across, double Up) From, (double Across, double Up) To, string Words);
