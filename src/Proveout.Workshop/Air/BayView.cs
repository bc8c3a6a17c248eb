namespace Proveout.Workshop;

/// <summary>One bay.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="RoomCelsius">Temperature of the room at its hottest.</param>
/// <param name="ReviewCelsius">Temperature of the bay that the design review reckons with.</param>
/// <param name="Heat">What gives off heat in it, the warmest first.</param>
/// <param name="RestWatts">All of that at rest, least and most.</param>
/// <param name="WorkWatts">All of that with everything at work, at most.</param>
/// <param name="NotKnown">What no type and no line of the file says, each with its place and what to write.</param>
/// <param name="Flow">What flows through it with new filters and at any time until they are changed, in m³/h.</param>
/// <param name="BayPascals">Pressure in it above the room's, with new filters.</param>
/// <param name="Ways">Its openings.</param>
/// <param name="Rise">By how much its air is warmer than the room's.</param>
/// <param name="Parts">Parts against their limits.</param>
/// <param name="Switches">Electronic switches on their heat sinks.</param>
/// <param name="Curves">What comes in and goes out over the pressure in it.</param>
/// <param name="Mistakes">Checks, and what each mistake would do.</param>
public sealed record BayView(
    string Name,
    double RoomCelsius,
    double ReviewCelsius,
    IReadOnlyList<PartHeat> Heat,
    (double Least, double Most) RestWatts,
    double WorkWatts,
    IReadOnlyList<string> NotKnown,
    BayFlow Flow,
    (double Least, double Most) BayPascals,
    IReadOnlyList<BayWay> Ways,
    BayRise Rise,
    IReadOnlyList<PartWarmth> Parts,
    IReadOnlyList<SwitchWarmth> Switches,
    BayCurves Curves,
    MistakeTable Mistakes);
