namespace Proveout.Engine.Machine;

/// <summary>A column of numbers.</summary>
/// <param name="Name">Its heading without the unit.</param>
/// <param name="Unit">The unit in its heading, in our spelling; empty when there is none.</param>
/// <param name="Values">Its numbers in that unit; not a number where the cell is empty.</param>
public sealed record DataColumn(string Name, string Unit, IReadOnlyList<double> Values)
{
    /// <summary>The numbers in a unit; a column without a unit is taken to be in it already. Null when the units are of different kinds.</summary>
    public IReadOnlyList<double>? In(string unit)
    {
        if (Unit.Length == 0 || Unit == unit)
            return Values;
        return ColumnUnit.Find(Unit) is { } from && ColumnUnit.Find(unit) is { } to && from.Kind == to.Kind
            ? [.. Values.Select(value => ((value * from.Factor) + from.Offset - to.Offset) / to.Factor)]
            : null;
    }
}
