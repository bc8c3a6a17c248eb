using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>Tells by how a log begins whether a temperature is in the unit that it is taken for.</summary>
internal static class LogUnits
{
    // What a log begins with is a room's temperature, as a rule: 10 to 40 °C, that is 50 to 104 °F and 283 to 313 K.
    private const double ColdestRoom = 10;
    private const double WarmestRoom = 40;

    // So many buckets at the beginning, of which the median is taken.
    private const int Beginning = 9;

    /// <summary>Why the unit of a column is to be stated; null when nothing is strange.</summary>
    public static Diagnostic? Strange(LogColumns columns, IReadOnlyList<LogRun> runs)
    {
        foreach (var (sensor, column) in columns.Values.Where(column => column.Role == LogRole.Sensor).Index())
        {
            var run = runs[0];
            double[] begins = [.. run.Sensors[sensor].Mean.Where(double.IsFinite).Take(Beginning).Order()];
            if (begins.Length == 0)
                continue;
            var shown = begins[begins.Length / 2];
            if (OtherUnit(column, shown) is not { } other)
                continue;
            string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
            return new(
                "unit-of-temperature",
                new SourcePlace(columns.File, run.FirstLine, 1),
                Text($"{Quote.Of(column.Name)} begins at {shown:0.#}{(column.Unit.Length == 0 ? ", and has no unit" : " °C by its heading")}: in {other.Name} that would be a room at {other.Celsius:0.#} °C."),
                column.Unit.Length == 0 ? $"Head it `{column.Name} [{other.Symbol}]`, or `{column.Name} [degC]` if it began that warm." : $"Head it `{column.Name} [{other.Symbol}]`.");
        }

        return null;
    }

    // A column headed in °C that begins at 290 is in kelvin all the same: nothing was heated that far before. One that begins at 72 may have begun warm, and is believed.
    private static (string Name, string Symbol, double Celsius)? OtherUnit(LogColumn column, double shown)
    {
        var (fahrenheit, kelvin) = ((shown - 32) * 5 / 9, shown - 273.15);
        var isCelsius = column.Unit.Length == 0 || column.Unit == "degC";
        return isCelsius && kelvin is >= ColdestRoom and <= WarmestRoom ? ("kelvin", "K", kelvin)
            : column.Unit.Length == 0 && fahrenheit is >= ColdestRoom and <= WarmestRoom && shown > WarmestRoom ? ("degrees Fahrenheit", "degF", fahrenheit)
            : null;
    }
}
