namespace Proveout.Engine.Machine;

/// <summary>Which conductor of one design is which of the other: by identifier first, then by the same ends.</summary>
/// <param name="Matched">The same conductor in both, with the ends of the later one in the order of the earlier.</param>
/// <param name="Removed">Conductors of the earlier design alone.</param>
/// <param name="Added">Conductors of the later design alone.</param>
internal sealed record ConductorPairs(
    IReadOnlyList<(Conductor Before, Conductor After)> Matched, IReadOnlyList<Conductor> Removed, IReadOnlyList<Conductor> Added)
{
    public static ConductorPairs Of(MachineDesign before, MachineDesign after)
    {
        var known = after.Conductors.ToDictionary(conductor => conductor.Id, StringComparer.Ordinal);
        var ids = before.Conductors.Select(conductor => conductor.Id).ToHashSet(StringComparer.Ordinal);
        List<(Conductor, Conductor)> matched = [];
        List<Conductor> gone = [];
        foreach (var old in before.Conductors)
            if (known.TryGetValue(old.Id, out var now))
                matched.Add((old, Aligned(old, now)));
            else
                gone.Add(old);
        var come = after.Conductors.Where(conductor => !ids.Contains(conductor.Id)).ToList();
        var alike = from old in gone
                    from now in come
                    where Ends(old).SetEquals(Ends(now))
                    orderby Differences(old, now), old.Id, now.Id
                    select (old, now);
        foreach (var (old, now) in alike.ToArray())
            if (gone.Contains(old) && come.Contains(now))
            {
                gone.Remove(old);
                come.Remove(now);
                matched.Add((old, Aligned(old, now)));
            }

        return new(matched, gone, come);
    }

    private static HashSet<TerminalReference> Ends(Conductor conductor) => [conductor.From, conductor.To];

    private static int Differences(Conductor old, Conductor now) =>
        new[]
        {
            old.Colour != now.Colour,
            old.CrossSection.SquareMillimeters != now.CrossSection.SquareMillimeters,
            old.Length.Millimeters != now.Length.Millimeters,
            !old.Route.Equals(now.Route),
        }.Count(differs => differs);

    // Which end is written first means nothing: the order in which fewer ends move is the right one.
    private static Conductor Aligned(Conductor old, Conductor now)
    {
        var turned = now with { From = now.To, To = now.From, Route = now.Route.Reverse().ToValueList() };
        return Moves(old, turned) < Moves(old, now) ? turned : now;
    }

    private static int Moves(Conductor old, Conductor now) => (old.From == now.From ? 0 : 1) + (old.To == now.To ? 0 : 1);
}
