using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>What a column of a log holds.</summary>
internal enum LogRole
{
    /// <summary>Nothing that is used.</summary>
    Other,

    /// <summary>The time of the row.</summary>
    Time,

    /// <summary>A temperature shown.</summary>
    Sensor,

    /// <summary>What a heater is told to give.</summary>
    Output,

    /// <summary>A temperature asked for.</summary>
    Target,
}

/// <summary>A column of a log by its heading.</summary>
/// <param name="Index">Its place, from 0.</param>
/// <param name="Role">What it holds.</param>
/// <param name="Name">Its heading without the unit.</param>
/// <param name="Stem">The words of its heading that tell which heater it belongs to; may be empty.</param>
/// <param name="Unit">Its unit in our spelling; empty when its heading has none.</param>
/// <param name="FullOutput">What it calls full output; null when its heading does not tell.</param>
internal sealed record LogColumn(int Index, LogRole Role, string Name, string Stem, string Unit, double? FullOutput)
{
    private readonly ColumnUnit? _unit = ColumnUnit.Find(Unit);

    /// <summary>A number of the column in seconds or degrees Celsius; as it stands when it is an output.</summary>
    public double InUnit(double value) => _unit is null || Role == LogRole.Output ? value : (value * _unit.Factor) + _unit.Offset;
}
