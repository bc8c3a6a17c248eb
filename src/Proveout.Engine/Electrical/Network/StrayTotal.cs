using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>How much insulation there is, by number and by conductance in siemens.</summary>
/// <remarks>The number says for sure when there is none; conductances that are added and taken away leave a rounding error of one part in 10³⁰.</remarks>
internal readonly record struct StrayTotal(int Number, DoubleDouble Siemens)
{
    public static StrayTotal operator +(StrayTotal one, StrayTotal other) => new(one.Number + other.Number, one.Siemens + other.Siemens);

    public static StrayTotal operator -(StrayTotal one, StrayTotal other) => new(one.Number - other.Number, one.Siemens - other.Siemens);

    /// <summary>The conductance, zero when there is none.</summary>
    public double Sum => Number == 0 ? 0 : (double)Siemens;
}
