using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>
/// The order in which to fit the conductors: protective bonding first, then mains from where it enters inwards, supplies, loads, motors, signals, data;
/// nearest to where power enters first. Bonding, mains and supplies are a step each; of the rest, what runs between two parts is a step, so that it can
/// be checked while it is in hand. Common practice.
/// </summary>
public sealed class WorkOrder
{
    private readonly WiringContext _context;
    private readonly ILookup<(string, string), WorkStage> _between;

    private WorkOrder(WiringContext context)
    {
        _context = context;
        _between = context.Design.Conductors.ToLookup(PairOf, OwnStage);
    }

    /// <summary>The steps that have a conductor, in order.</summary>
    public static IReadOnlyList<WorkStep> Of(WiringContext context)
    {
        var order = new WorkOrder(context);
        return
        [
            .. context.Design.Conductors
                .GroupBy(order.StageOf)
                .OrderBy(stage => stage.Key)
                .SelectMany(stage => Split(stage.Key, order.Sorted(stage.Key, [.. stage])))
                .Select((step, at) => step with { Number = at + 1 }),
        ];
    }

    private static IEnumerable<WorkStep> Split(WorkStage stage, ValueList<Conductor> conductors) => stage <= WorkStage.Supplies
        ? [new(0, stage, "", conductors)]
        : conductors.GroupBy(PairOf).Select(pair => new WorkStep(0, stage, $"{pair.Key.Item1} and {pair.Key.Item2}", pair.ToValueList()));

    private ValueList<Conductor> Sorted(WorkStage stage, Conductor[] conductors)
    {
        var distances = DistancesOf(stage, conductors);
        return
        [
            .. conductors
                .OrderBy(conductor => Math.Min(Distance(conductor.From), Distance(conductor.To)))
                .ThenBy(conductor => Math.Max(Distance(conductor.From), Distance(conductor.To)))
                .ThenBy(PairOf),
        ];

        int Distance(TerminalReference end) => distances.GetValueOrDefault(end.Part, int.MaxValue);
    }

    // The 0 V of a sensor goes with its signal: what runs between the same two parts is fitted together.
    private WorkStage StageOf(Conductor conductor) =>
        OwnStage(conductor) is WorkStage.Supplies ? _between[PairOf(conductor)].Append(WorkStage.Supplies).Max() : OwnStage(conductor);

    private WorkStage OwnStage(Conductor conductor) => _context.ClassOf(conductor) switch
    {
        NetClass.ProtectiveEarth => WorkStage.ProtectiveBonding,
        NetClass.Line or NetClass.Neutral => WorkStage.Mains,
        _ => OfEnds(conductor),
    };

    private WorkStage OfEnds(Conductor conductor)
    {
        TerminalReference[] ends = [conductor.From, conductor.To];
        TerminalRole[] roles = [.. ends.Select(end => _context.Design.FindTerminal(end)!.Role)];
        if (roles.Contains(TerminalRole.Data))
            return WorkStage.Data;
        return ends.Select(end => OfPart(_context.Design.FindPart(end.Part)!)).Max() is { } byPart ? byPart
            : roles.Contains(TerminalRole.Winding) ? WorkStage.Motors
            : roles.Contains(TerminalRole.Signal) ? WorkStage.Signals
            : roles.Contains(TerminalRole.Output) ? WorkStage.Loads
            : _context.ClassOf(conductor) == NetClass.Signal ? WorkStage.Signals
            : WorkStage.Supplies;
    }

    // Class letters of IEC 81346-2.
    private static WorkStage? OfPart(Part part) => part.Type.ClassLetter switch
    {
        "B" or "S" => WorkStage.Signals,
        "M" => WorkStage.Motors,
        "E" or "G" or "P" => WorkStage.Loads,
        _ => null,
    };

    private static (string, string) PairOf(Conductor conductor) =>
        string.CompareOrdinal(conductor.From.Part, conductor.To.Part) <= 0 ? (conductor.From.Part, conductor.To.Part) : (conductor.To.Part, conductor.From.Part);

    // Conductors of this stage between a part and where its power comes from.
    private Dictionary<string, int> DistancesOf(WorkStage stage, Conductor[] conductors)
    {
        var neighbours = conductors
            .SelectMany(conductor => new[] { (conductor.From.Part, conductor.To.Part), (conductor.To.Part, conductor.From.Part) })
            .ToLookup(pair => pair.Item1, pair => pair.Item2);
        var distances = (stage <= WorkStage.Mains ? MainsInlets.Of(_context.Design).Select(inlet => inlet.Part) : Sources())
            .Distinct()
            .ToDictionary(part => part.Designation, _ => 0, StringComparer.Ordinal);
        var ahead = new Queue<string>(distances.Keys);
        while (ahead.TryDequeue(out var part))
            foreach (var next in neighbours[part])
                if (distances.TryAdd(next, distances[part] + 1))
                    ahead.Enqueue(next);
        return distances;
    }

    // A board that makes a supply of its own gets its power from somewhere too, so supplies come first (class letters of IEC 81346-2: G makes electricity, T converts it).
    private IEnumerable<Part> Sources()
    {
        Part[] sources = [.. _context.Design.Parts.Where(part => part.Type.Circuit.OfType<Source>().Any())];
        Part[] supplies = [.. sources.Where(part => part.Type.ClassLetter is "G" or "T")];
        return supplies.Length > 0 ? supplies : sources;
    }
}
