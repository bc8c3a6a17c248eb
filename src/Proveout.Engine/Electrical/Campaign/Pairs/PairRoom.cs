namespace Proveout.Engine.Electrical;

/// <summary>What one thread simulates several faults in, and looks for guards in: made once for each network, shared by all set-ups on it.</summary>
/// <param name="faults">All faults.</param>
/// <remarks>A large machine has hundreds of set-ups, most of them on the network with every plug apart.</remarks>
internal sealed class PairRoom(IReadOnlyList<WiringFault> faults)
{
    private readonly Dictionary<StrayEnds, ChangedStrays> _strays = [];
    private readonly Dictionary<PairLimit, GuardSide> _sides = [];

    /// <summary>What junctions and insulation touch under a change of a network.</summary>
    public ChangedStrays StraysOf(StrayEnds rest) => _strays.TryGetValue(rest, out var strays) ? strays : _strays[rest] = new ChangedStrays(rest);

    /// <summary>The guards that a network has to offer.</summary>
    public GuardSide SideOf(PairLimit limit) => _sides.TryGetValue(limit, out var side) ? side : _sides[limit] = new GuardSide(limit, faults);
}
