using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Makes figures of a sheet.</summary>
internal static class SheetFigures
{
    /// <summary>A figure with its uncertainty; without when that is not known.</summary>
    public static SheetFigure Of(string name, Uncertain figure, string unit) => double.IsFinite(figure.Standard) && figure.Standard > 0
        ? new(name, unit, new(figure.Value, figure.Expanded, SensibleDigits.Of(figure, unit)))
        : Of(name, figure.Value, unit);

    /// <summary>A figure of which no uncertainty is known.</summary>
    public static SheetFigure Of(string name, double value, string unit) => new(name, unit, new(value, 0, $"{SensibleDigits.Of(Math.Abs(value) < 5e-7 ? 0 : value)} {unit}".TrimEnd()));
}
