namespace Proveout.Engine.Machine;

/// <summary>How dangerous terminals are: by their role, and by the conductors that join them to others of a role, in either design.</summary>
internal sealed class TerminalRanks
{
    private readonly Dictionary<TerminalReference, ChangeRank> _ranks = [];
    private readonly HashSet<TerminalReference> _ranked;

    public TerminalRanks(params IReadOnlyList<MachineDesign> designs)
    {
        foreach (var design in designs)
            foreach (var terminal in design.Terminals)
                Raise(terminal, OfRole(design.FindTerminal(terminal)!.Role));
        _ranked = [.. _ranks.Where(pair => pair.Value != ChangeRank.Other).Select(pair => pair.Key)];
        var conductors = designs.SelectMany(design => design.Conductors).ToArray();
        foreach (var conductor in conductors.Where(conductor => conductor.Colour == ConductorColour.GreenYellow))
            RaiseBoth(conductor, ChangeRank.Protective, _ => true);
        // A terminal without a role of its own carries what it is wired to, over any number of conductors.
        var isSettled = false;
        while (!isSettled)
        {
            isSettled = true;
            foreach (var conductor in conductors)
                if (RaiseBoth(conductor, Of(conductor), terminal => !_ranked.Contains(terminal)))
                    isSettled = false;
        }
    }

    public ChangeRank Of(TerminalReference terminal) => _ranks.GetValueOrDefault(terminal, ChangeRank.Other);

    public ChangeRank Of(Conductor conductor) => Of([conductor.From, conductor.To]);

    public ChangeRank Of(IEnumerable<TerminalReference> terminals) => terminals.Select(Of).DefaultIfEmpty(ChangeRank.Other).Min();

    private bool RaiseBoth(Conductor conductor, ChangeRank rank, Func<TerminalReference, bool> may) =>
        (may(conductor.From) && Raise(conductor.From, rank)) | (may(conductor.To) && Raise(conductor.To, rank));

    private bool Raise(TerminalReference terminal, ChangeRank rank)
    {
        if (_ranks.TryGetValue(terminal, out var known) && known <= rank)
            return false;
        _ranks[terminal] = rank;
        return true;
    }

    private static ChangeRank OfRole(TerminalRole role) => role switch
    {
        TerminalRole.ProtectiveEarth => ChangeRank.Protective,
        TerminalRole.Line or TerminalRole.Neutral => ChangeRank.Mains,
        TerminalRole.Positive or TerminalRole.ZeroVolt => ChangeRank.Supply,
        _ => ChangeRank.Other,
    };
}
