namespace Proveout.Engine.Motion;

/// <summary>One cause of uncertainty.</summary>
/// <param name="Cause">What it is, in words.</param>
/// <param name="Standard">Standard uncertainty of the cause, in its own unit.</param>
/// <param name="Sensitivity">How much the result changes for one unit of it.</param>
/// <param name="Degrees">Degrees of freedom behind it; infinite for a figure that is taken as known.</param>
public sealed record BudgetLine(string Cause, double Standard, double Sensitivity = 1, double Degrees = double.PositiveInfinity)
{
    /// <summary>What it adds to the result.</summary>
    public double Contribution => Math.Abs(Sensitivity) * Standard;
}
