namespace Proveout.Engine.Electrical;

/// <summary>What is asked of a supply.</summary>
/// <param name="Part">Designation of the part that holds it.</param>
/// <param name="LimitAmperes">Most that it gives in the cool.</param>
/// <param name="WorkAmperes">What is asked of it with everything at work.</param>
public sealed record SupplyLoss(string Part, double LimitAmperes, double WorkAmperes);
