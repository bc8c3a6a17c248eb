namespace Proveout.Engine.Electrical;

/// <summary>What something takes from a supply.</summary>
/// <param name="Part">Designation of the part that takes it.</param>
/// <param name="Reach">The supply.</param>
/// <param name="Fed">Its node on the supply's positive or line side.</param>
/// <param name="Returned">Its node on the other side.</param>
/// <param name="SteadyAmperes">Once warm, at rest: heaters hold their temperature, motors stand.</param>
/// <param name="WarmUpAmperes">While heaters run at full power and motors stand.</param>
/// <param name="WorstAmperes">Heaters at full power, motors at work.</param>
public sealed record Demand(string Part, SupplyReach Reach, int Fed, int Returned, double SteadyAmperes, double WarmUpAmperes, double WorstAmperes);
