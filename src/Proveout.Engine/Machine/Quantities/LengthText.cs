using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>Lengths as people write them.</summary>
public static class LengthText
{
    /// <summary>Reads a length above zero with its unit, such as <c>25 m</c>; otherwise says why it is none.</summary>
    public static bool TryRead(string text, out Length length, [NotNullWhen(false)] out string? problem)
    {
        var read = DimensionsText.TryRead(text, 1, 1, mayBeZero: false, out var millimetres, out var fault);
        length = read ? Length.FromMillimeters(millimetres[0]) : default;
        problem = fault is null ? null : $"{fault.Message} {fault.Mend}";
        return read;
    }
}
