using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What protective conductors join, with nothing else counted.</summary>
/// <remarks>A lug on paint, and a part whose metal carries no bonding on (slide, hinge, anodised face), join nothing.</remarks>
internal sealed class ProtectiveNets
{
    private readonly ReviewContext _context;
    private readonly ILookup<int, NetworkElement> _at;
    private readonly int[] _entries;
    private readonly HashSet<int> _bonded;
    private readonly Islands _apparent;

    public ProtectiveNets(ReviewContext context)
    {
        _context = context;
        var green = context.Design.Conductors.Where(conductor => conductor.Colour == ConductorColour.GreenYellow).ToDictionary(conductor => conductor.Id, StringComparer.Ordinal);
        var metal = context.Wiring.Elements
            .Where(element => element.IsMetal && (element.Kind is not (ElementKind.Copper or ElementKind.Joint) || green.ContainsKey(element.Subject)))
            .ToArray();
        _at = metal.Where(element => Bonds(element, green)).SelectMany(element => new[] { (element.A, element), (element.B, element) }).ToLookup(end => end.Item1, end => end.element);
        _entries =
        [
            .. MainsInlets.Of(context.Design)
                .Select(inlet => MainsInlets.Find(inlet.Part, inlet.Connector, TerminalRole.ProtectiveEarth))
                .OfType<TerminalReference>()
                .Select(context.Wiring.TerminalNode),
        ];
        _bonded = Reached(_ => false);
        _apparent = new Islands(context.Wiring.Nodes.Count, metal.Select(element => (element.A, element.B)));
    }

    /// <summary>True when the machine has an inlet with a protective pin.</summary>
    public bool HasEntry => _entries.Length > 0;

    /// <summary>True when protective conductors join a terminal to the inlet's protective pin.</summary>
    public bool IsBonded(TerminalReference terminal) => _bonded.Contains(_context.Wiring.TerminalNode(terminal));

    /// <summary>True when it only looks so: paint, a slide or a hinge lies between.</summary>
    public bool LooksBonded(TerminalReference terminal) =>
        !IsBonded(terminal) && _entries.Any(entry => _apparent.Of(entry) == _apparent.Of(_context.Wiring.TerminalNode(terminal)));

    /// <summary>Parts that lose their bond when a part is taken out with all its conductors.</summary>
    public IEnumerable<string> BondedThrough(Part part)
    {
        var wires = part.Type.Terminals.Sum(terminal => _context.Context.ConductorsAt(new(part.Designation, terminal.Name)).Count(conductor => conductor.Colour == ConductorColour.GreenYellow));
        if (wires < 2)
            return [];
        var left = Reached(element => element.Subject == part.Designation);
        return _context.Design.Parts
            .Where(other => other != part)
            .Where(other => other.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.ProtectiveEarth
                && _context.Wiring.TerminalNode(new(other.Designation, terminal.Name)) is var node && _bonded.Contains(node) && !left.Contains(node)))
            .Select(other => other.Designation);
    }

    private bool Bonds(NetworkElement element, Dictionary<string, Conductor> green) => element.Kind switch
    {
        ElementKind.Inside => _context.PartOf(element).Type.CarriesBond,
        ElementKind.Joint => EndOf(green[element.Subject], element.Name) != EndKind.LugOnPaint,
        _ => true,
    };

    private static EndKind? EndOf(Conductor conductor, string terminal) =>
        conductor.From.ToString() == terminal ? conductor.Make.FromEnd : conductor.Make.ToEnd;

    private HashSet<int> Reached(Func<NetworkElement, bool> leftOut)
    {
        var reached = new HashSet<int>(_entries);
        var queue = new Queue<int>(reached);
        while (queue.TryDequeue(out var node))
            foreach (var element in _at[node])
                if (!leftOut(element) && (element.A == node ? element.B : element.A) is var other && reached.Add(other))
                    queue.Enqueue(other);
        return reached;
    }
}
