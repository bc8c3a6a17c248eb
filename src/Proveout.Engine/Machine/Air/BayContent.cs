using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>What is known of a part in a bay besides what its type says.</summary>
/// <param name="Part">Designation of the part.</param>
public sealed record BayContent(string Part)
{
    /// <summary>Least heat that it gives off at rest; null when it is computed from its type.</summary>
    public Power? LeastHeat { get; init; }

    /// <summary>Most heat that it gives off; null when it is computed from its type.</summary>
    public Power? MostHeat { get; init; }

    /// <summary>Temperature that the air at it may have; null for what its type says.</summary>
    public Temperature? AirLimit { get; init; }

    /// <summary>By how much the air at it is warmer than the air that leaves the bay; null for the usual allowance.</summary>
    public TemperatureDelta? AboveAir { get; init; }
}
