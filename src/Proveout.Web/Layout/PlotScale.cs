using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Web.Layout;

/// <summary>Places the values of an axis on a drawing, and chooses where its figures stand.</summary>
/// <param name="Axis">The axis.</param>
/// <param name="Start">Where its beginning lies.</param>
/// <param name="End">Where its end lies.</param>
internal sealed record PlotScale(PlotAxis Axis, double Start, double End)
{
    private const int MostTicks = 6;

    private static readonly int[] Factors = [1, 2, 5, 10];

    /// <summary>Where a value lies, as SVG writes it.</summary>
    public string At(double value) => Place(value).ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Round values along the axis: steps of 1, 2 or 5 times a power of ten.</summary>
    public IEnumerable<(double Value, string Text)> Ticks()
    {
        var span = Axis.To - Axis.From;
        if (!(span > 0) || !double.IsFinite(span))
            yield break;
        var power = Math.Pow(10, Math.Floor(Math.Log10(span / MostTicks)));
        var step = Factors.Select(factor => factor * power).First(candidate => span / candidate <= MostTicks);
        var format = step >= 1 ? "0" : $"0.{new string('0', (int)Math.Ceiling(-Math.Log10(step)))}";
        for (var index = Math.Ceiling((Axis.From / step) - 1e-9); index * step <= Axis.To + (1e-9 * span); index++)
            // Adding zero turns -0 into 0.
            yield return (index * step, ((index * step) + 0.0).ToString(format, CultureInfo.InvariantCulture));
    }

    private double Place(double value) => Start + ((Math.Clamp(value, Math.Min(Axis.From, Axis.To), Math.Max(Axis.From, Axis.To)) - Axis.From) / (Axis.To - Axis.From) * (End - Start));
}
