namespace Proveout.Workshop;

/// <summary>A plot: lines and marks over two axes.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Description">The same in words, for who does not see it.</param>
/// <param name="Across">The axis across.</param>
/// <param name="Up">The axis up.</param>
/// <param name="Lines">Lines.</param>
/// <param name="Marks">Upright marks with a word.</param>
public sealed record PlotView(string Title, string Description, PlotAxis Across, PlotAxis Up, IReadOnlyList<PlotLine> Lines, IReadOnlyList<PlotMark> Marks);

/// <summary>An axis.</summary>
/// <param name="Label">What it measures, with the unit.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public sealed record PlotAxis(string Label, double From, double To);

/// <summary>A line.</summary>
/// <param name="Points">Its corners.</param>
/// <param name="IsFilled">True when the area that it encloses is filled.</param>
public sealed record PlotLine(IReadOnlyList<(double Across, double Up)> Points, bool IsFilled = false);

/// <summary>An upright mark.</summary>
/// <param name="Across">Where.</param>
/// <param name="Word">What it marks.</param>
public sealed record PlotMark(double Across, string Word);
