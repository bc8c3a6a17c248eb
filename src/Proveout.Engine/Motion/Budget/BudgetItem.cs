namespace Proveout.Engine.Motion;

/// <summary>One cause of an error at the nozzle.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Direction">In which direction it moves the nozzle.</param>
/// <param name="Bound">By how much at most, in mm either way, with x and y at a share of their travel from 0 to 1.</param>
public sealed record BudgetItem(string Name, BudgetDirection Direction, Func<double, double, double> Bound);
