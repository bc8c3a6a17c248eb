namespace Proveout.Workshop;

/// <summary>The air at a part against what the part bears.</summary>
/// <param name="Part">Its designation.</param>
/// <param name="AboveAirKelvin">By how much the air at it is warmer than the air that leaves the bay.</param>
/// <param name="HottestCelsius">Hottest air at it; null where nothing carries the heat away.</param>
/// <param name="BearsUpTo">Hottest air in which it does what is asked of it.</param>
/// <param name="Basis">Where that comes from.</param>
/// <param name="GivesPercent">What a supply surely gives of its current then; null for other parts.</param>
/// <param name="AskedPercent">What is asked of it at most; null for other parts.</param>
/// <param name="IsBorne">True when it bears that.</param>
public sealed record PartWarmth(
    string Part, double AboveAirKelvin, double? HottestCelsius, double BearsUpTo, string Basis, double? GivesPercent, double? AskedPercent, bool IsBorne);
