using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Puts a surface on paper, at a scale of ISO 5455.</summary>
internal sealed class BayScale
{
    private static readonly double[] Reductions = [1, 2, 5, 10, 20, 50, 100, 200, 500];
    private readonly double _left;
    private readonly double _bottom;

    /// <summary>The largest scale at which a surface fits a height of paper: one of the standard, or just so.</summary>
    public BayScale(Surface surface, double heightMm, bool isStandard = true)
    {
        var (width, height) = (surface.Size.Width.Millimeters, surface.Size.Height.Millimeters);
        var least = Math.Max(width / (Paper.Right - Paper.Left), height / heightMm);
        By = isStandard ? Reductions.FirstOrDefault(by => least <= by, least) : least;
        _left = (Paper.Width - (width / By)) / 2;
        _bottom = Paper.Top - 4 + (height / By);
    }

    /// <summary>Millimetres of the surface to one of the paper.</summary>
    public double By { get; }

    public double Left => _left;

    public double Bottom => _bottom;

    public double X(double acrossMm) => _left + (acrossMm / By);

    public double Y(double upMm) => _bottom - (upMm / By);

    public (double X, double Y) At(SpotMm spot) => (X(spot.Across), Y(spot.Up));
}
