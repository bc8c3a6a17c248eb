namespace Proveout.Engine.Electrical;

/// <summary>A way from red to black.</summary>
/// <param name="Volts">The most volts along it.</param>
/// <param name="Elements">The elements on it.</param>
internal sealed record VoltWay(double Volts, int[] Elements)
{
    /// <summary>No way below what shows as over range.</summary>
    public static VoltWay None { get; } = new(double.PositiveInfinity, []);

    /// <summary>True when a fault changes an element of the way.</summary>
    public bool IsTouchedBy(WiringFault fault)
    {
        for (var index = 0; index < fault.Changes.Count; index++)
            if (fault.Changes[index].ChangedElement is { } element && Array.IndexOf(Elements, element) >= 0)
                return true;
        return false;
    }
}
