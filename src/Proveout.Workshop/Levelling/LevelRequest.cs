namespace Proveout.Workshop;

/// <summary>What a person brings to level a plate.</summary>
/// <param name="Map">Heights: a table with <c>x</c>, <c>y</c>, <c>height</c>, or a grid of numbers without headings; null without.</param>
/// <param name="Later">The same after the plate has been hot for a while; null without.</param>
/// <param name="Supports">Screws or lifts, <c>name x y</c> each, by lines or semicolons; empty without.</param>
/// <param name="Repeats">Repeated readings at one place, a line for each group; null without.</param>
/// <param name="Leave">Name of the support to leave; empty to let it be chosen.</param>
/// <param name="ClockwiseLowers">True when a clockwise turn lowers the plate.</param>
/// <param name="MayBend">True when more than three supports may bend the plate to take a twist out.</param>
/// <param name="Typed">Figures by the names of <see cref="LevelFields"/>.</param>
public sealed record LevelRequest(
    NamedText? Map, NamedText? Later, string Supports, NamedText? Repeats, string Leave, bool ClockwiseLowers, bool MayBend, IReadOnlyDictionary<string, string> Typed);
