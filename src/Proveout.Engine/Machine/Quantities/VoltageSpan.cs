using System.Diagnostics.CodeAnalysis;

namespace Proveout.Engine.Machine;

/// <summary>Two voltages, written <c>0.4 V .. 0.8 V</c>.</summary>
/// <param name="LowVolts">The lower one, above zero, in volts.</param>
/// <param name="HighVolts">The upper one, in volts.</param>
internal readonly record struct VoltageSpan(double LowVolts, double HighVolts)
{
    public static bool TryRead(string text, out VoltageSpan span, [NotNullWhen(false)] out QuantityFault? fault)
    {
        span = default;
        var limits = text.Split("..");
        if (limits.Length != 2)
        {
            fault = new(
                "not-a-quantity",
                $"{Quote.Of(text)} is not a pair of voltages.",
                "Write the lowest and the highest, such as `0.4 V .. 0.8 V`.");
            return false;
        }

        if (!Measure.Voltage.TryRead(limits[0], true, out var low, out fault)
            || !Measure.Voltage.TryRead(limits[1], true, out var high, out fault))
            return false;
        if (!(low > 0 && low <= high))
            fault = new(
                "out-of-range",
                $"The limits of {Quote.Of(text)} are not in rising order above zero.",
                "Write the lower limit first, above zero.");
        span = new(low, high);
        return fault is null;
    }

    public override string ToString() => $"{Measure.Voltage.Write(LowVolts)} .. {Measure.Voltage.Write(HighVolts)}";
}
