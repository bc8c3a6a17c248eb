using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What still has power with some switches open, and every relay that thereby loses its coil released.</summary>
/// <remarks>Commands of programs count as given, and all other switches as closed: what then has no power surely has none.</remarks>
internal sealed class StoppedMachine
{
    private readonly ReviewContext _context;
    private readonly HashSet<string> _open;
    private readonly Dictionary<string, IReadOnlySet<string>> _released = new(StringComparer.Ordinal);
    private readonly Dictionary<int, IReadOnlySet<int>> _joined = [];

    public StoppedMachine(ReviewContext context, IEnumerable<string> open)
    {
        (_context, _open) = (context, [.. open]);
        var drives = context.Design.Parts.SelectMany(part => part.Type.Circuit.OfType<Drive>().Select(drive => (part, drive))).ToList();
        // Each round releases more relays, until no further one loses its coil.
        while (drives.Where(item => !IsPulledIn(item.part, item.drive)).ToArray() is { Length: > 0 } losing)
        {
            foreach (var group in losing.GroupBy(item => item.part.Designation))
                _released[group.Key] = group.Select(item => item.drive.Control).ToHashSet(StringComparer.Ordinal);
            drives.RemoveAll(losing.Contains);
            _joined.Clear();
        }
    }

    /// <summary>True when some supply still reaches both nodes.</summary>
    public bool IsPowered(int fed, int returned) => _context.SuppliesOf(fed, returned)
        .Any(reach => From(reach.Supply.Plus).Contains(fed) && From(reach.Supply.Zero).Contains(returned) && IsAlive(reach, []));

    // A source inside a part lives as long as its feed does.
    private bool IsAlive(SupplyReach reach, HashSet<SupplyReach> asked)
    {
        if (reach.Supply.Source?.Feed is not { } feed || !asked.Add(reach) || _context.FeederOf(reach) is not { } feeder)
            return true;
        return From(feeder.Supply.Plus).Contains(_context.FindNode(reach.Supply.Part!.Designation, feed.A)!.Value)
            && From(feeder.Supply.Zero).Contains(_context.FindNode(reach.Supply.Part.Designation, feed.B)!.Value)
            && IsAlive(feeder, asked);
    }

    private bool IsPulledIn(Part part, Drive drive) =>
        _context.FindNode(part.Designation, drive.A) is { } a && _context.FindNode(part.Designation, drive.B) is { } b && IsPowered(a, b);

    private IReadOnlySet<int> From(int start) =>
        _joined.TryGetValue(start, out var known) ? known : _joined[start] = _context.JoinedTo(start, IsOpen);

    private bool IsOpen(NetworkElement element) =>
        element.Part is Contact contact
        && (_open.Contains(element.Subject)
            || (_released.TryGetValue(element.Subject, out var controls) && controls.Contains(contact.Control)
                && !contact.ClosedAt.Contains(RestOf(element.Subject, contact.Control), StringComparer.Ordinal)));

    private string RestOf(string part, string control) =>
        _context.Design.FindPart(part)!.Type.Controls.First(candidate => candidate.Name == control).Rest;
}
