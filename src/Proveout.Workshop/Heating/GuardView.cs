namespace Proveout.Workshop;

/// <summary>What to set a guard to, with what it would do.</summary>
/// <param name="WindowSeconds">What is shown must rise within this time, while it heats up ...</param>
/// <param name="LeastRiseKelvin">... by this much.</param>
/// <param name="StrayKelvin">While it holds, it may stray by this much ...</param>
/// <param name="StraySeconds">... for this long.</param>
/// <param name="FalseAlarmPercent">Largest share of sound heaters that it stops, with 95 % confidence.</param>
/// <param name="MissedPercent">Largest share of heaters with a fallen sensor that it misses, with 95 % confidence.</param>
/// <param name="HottestCelsius">Hottest that such a heater became of all that were tried.</param>
/// <param name="HottestHeldCelsius">Hottest when the sensor falls out while it is held; null when the stray does not show it.</param>
public sealed record GuardView(
    double WindowSeconds, double LeastRiseKelvin, double StrayKelvin, double StraySeconds, double FalseAlarmPercent, double MissedPercent, double HottestCelsius, double? HottestHeldCelsius);
