namespace Proveout.Workshop;

/// <summary>An electronic switch on its heat sink in the hottest air.</summary>
/// <param name="Part">Designation of the switch.</param>
/// <param name="Sink">What carries its heat to the air.</param>
/// <param name="Watts">Most heat that it makes.</param>
/// <param name="SinkCelsius">Hottest heat sink; null where nothing carries the heat away.</param>
/// <param name="BaseCelsius">Hottest base.</param>
/// <param name="JunctionCelsius">Hottest junction.</param>
/// <param name="JunctionLimit">Temperature that the junction may reach.</param>
/// <param name="MostKelvinsPerWatt">Largest thermal resistance of the heat sink that would do; null when none does.</param>
public sealed record SwitchWarmth(
    string Part, string Sink, double Watts, double? SinkCelsius, double? BaseCelsius, double? JunctionCelsius, double JunctionLimit, double? MostKelvinsPerWatt);
