namespace Proveout.Engine.Machine;

/// <summary>Parts that have another designation and are otherwise the same.</summary>
internal static class PartNames
{
    /// <summary>The new designation by the old one, where just one part fits on either side.</summary>
    public static IReadOnlyDictionary<string, string> Renamed(MachineDesign before, MachineDesign after)
    {
        var gone = before.Parts.Where(part => after.FindPart(part.Designation) is null).ToLookup(Nameless);
        var come = after.Parts.Where(part => before.FindPart(part.Designation) is null).ToLookup(Nameless);
        return gone
            .Where(group => group.Count() == 1 && come[group.Key].Count() == 1)
            .ToDictionary(group => group.Single().Designation, group => come[group.Key].Single().Designation, StringComparer.Ordinal);
    }

    /// <summary>The same design with the new designations.</summary>
    public static MachineDesign Applied(MachineDesign design, IReadOnlyDictionary<string, string> renamed)
    {
        if (renamed.Count == 0)
            return design;
        string New(string name) => renamed.GetValueOrDefault(name, name);
        TerminalReference Renewed(TerminalReference terminal) => terminal with { Part = New(terminal.Part) };
        return design with
        {
            Parts =
            [
                .. design.Parts.Select(part => part with
                {
                    Designation = New(part.Designation),
                    Placement = part.Placement is { } placement ? placement with { On = New(placement.On) } : null,
                }),
            ],
            Conductors = [.. design.Conductors.Select(conductor => conductor with { From = Renewed(conductor.From), To = Renewed(conductor.To) })],
        };
    }

    public static DesignChange ChangeOf(string old, string now) =>
        new(ChangeKind.PartRenamed, ChangeRank.Other, [old, now], $"{old} is now called {now}: change its label and those of its conductors.");

    private static Part Nameless(Part part) => part with { Designation = "" };
}
