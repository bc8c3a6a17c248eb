using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Finds the places where power can be kept out of the rest of the machine, and by the live model what is behind each.</summary>
internal sealed class Gates
{
    // A fuse on a board of many terminals is soldered or deep inside: it stays where it is.
    private const int BoardTerminals = 16;

    // What more parts than these hang on is a branch, not a load.
    private const int MostPartsOfALoad = 2;

    private readonly WiringContext _context;
    private readonly LiveModel _model;
    private readonly ControlState _all;
    private readonly LiveLoad[] _loads;

    private Gates(LiveModel model)
    {
        (_context, _model) = (model.Context, model);
        _all = model.States.LastOrDefault(state => state.Kind == ControlStateKind.AllOutputs) ?? model.States[^1];
        _loads = [.. LiveLoad.Of(model)];
    }

    /// <summary>Every gate: plugs with something wired to them, and fuses behind which some loads, but not all, are fed.</summary>
    public static IReadOnlyList<Gate> Of(LiveModel model)
    {
        var gates = new Gates(model);
        return [.. gates.Plugs(), .. gates.Fuses()];
    }

    private IEnumerable<Gate> Plugs() =>
        from part in _context.Design.Parts
        from connector in part.Type.Connectors
        where connector.Pluggable
        let terminals = connector.Terminals.Select(terminal => new TerminalReference(part.Designation, terminal)).ToArray()
        where terminals.Any(terminal => _context.ConductorsAt(terminal).Any())
        let elements = terminals.Select(terminal => _context.MatingOf(terminal).Index).ToValueList()
        let behind = Behind(elements)
        select new Gate(KindOf(part, behind), part.Designation, connector.Name, IsFuse: false, elements, [.. terminals.Select(_context.Wiring.TerminalNode)], PartsOf(behind));

    private IEnumerable<Gate> Fuses() =>
        from element in _context.Wiring.Elements
        where element.Part is Fuse { Curve: not FuseCurve.Thermal }
        let part = _context.Design.FindPart(element.Subject)!
        where part.Type.Terminals.Count <= BoardTerminals
        let behind = Behind([element.Index])
        where behind.Length > 0 && behind.Length < Running().Length
        select new Gate(KindOf(part, behind), part.Designation, element.Name, IsFuse: true, [element.Index], [], PartsOf(behind));

    private LiveLoad[] Running()
    {
        var sound = _model.Sound(_all);
        return [.. _loads.Where(load => load.Watts(sound) > 0.25 * load.MostWatts)];
    }

    private LiveLoad[] Behind(ValueList<int> elements)
    {
        var without = _model.Solve(_all, [.. elements.Select(element => new Cut(element))]);
        return [.. Running().Where(load => load.Watts(without) < 0.1 * load.MostWatts)];
    }

    private static ValueList<string> PartsOf(LiveLoad[] loads) => [.. loads.Select(load => load.Part.Designation).Distinct()];

    private static GateKind KindOf(Part own, LiveLoad[] behind) =>
        behind.Length == 0 ? GateKind.Signal
        : behind.Any(load => load.Part == own) || PartsOf(behind).Count > MostPartsOfALoad ? GateKind.Board
        : behind.Any(load => load.IsHeater) ? GateKind.Heater
        : behind.Any(load => load.IsWinding || load.Part.Type.ClassLetter == "Q") ? GateKind.Motion
        : GateKind.SmallLoad;
}
