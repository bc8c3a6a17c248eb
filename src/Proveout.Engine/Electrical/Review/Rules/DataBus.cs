using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>A pair of data conductors with terminators.</summary>
/// <param name="Parts">Parts on both conductors.</param>
/// <param name="Terminators">Parts whose terminator is fitted, with its resistance in ohms.</param>
internal sealed record DataBus(IReadOnlyList<string> Parts, IReadOnlyList<(string Part, double Ohms)> Terminators)
{
    // A terminator of ISO 11898-2 is 120 ohm, from 100 to 130.
    private const double LeastOhms = 100;
    private const double MostOhms = 130;

    /// <summary>Every pair of data nets that some part can terminate, with at least two parts on it.</summary>
    public static IEnumerable<DataBus> Of(ReviewContext context)
    {
        var nets = new Islands(context.Wiring.Nodes.Count, context.Wiring.Elements.Where(element => element.IsMetal).Select(element => (element.A, element.B)));
        var partsOn = context.Design.Terminals
            .Where(terminal => context.Design.FindTerminal(terminal)!.Role == TerminalRole.Data && context.Context.IsWired(terminal))
            .ToLookup(terminal => nets.Of(context.Wiring.TerminalNode(terminal)), terminal => terminal.Part);
        var ends = (
            from element in context.Wiring.Elements
            where element.Part is Resistor && element.NominalOhms is >= LeastOhms and <= MostOhms
            from net in Nets(context, nets, element)
            where partsOn.Contains(net.Low) && partsOn.Contains(net.High)
            select (net, element.Subject, element.NominalOhms)).ToArray();
        return
            from bus in ends.GroupBy(end => (end.net.Low, end.net.High))
            let parts = partsOn[bus.Key.Low].Intersect(partsOn[bus.Key.High]).ToArray()
            where parts.Length > 1
            select new DataBus(parts, [.. bus.Where(end => end.net.IsFitted).Select(end => (end.Subject, end.NominalOhms))]);
    }

    // The two nets that a resistor joins, or would join with the jumper of its part fitted.
    private static IEnumerable<(int Low, int High, bool IsFitted)> Nets(ReviewContext context, Islands nets, NetworkElement element)
    {
        var (a, b) = (nets.Of(element.A), nets.Of(element.B));
        yield return (Math.Min(a, b), Math.Max(a, b), true);
        var part = context.PartOf(element);
        foreach (var jumper in part.Type.Jumpers.Where(jumper => part.Jumpers.All(setting => setting.Jumper != jumper.Name)))
            foreach (var post in jumper.Positions.Select(position => context.FindNode(part.Designation, position.Post)))
                if (context.FindNode(part.Designation, jumper.Common) is { } common && (post == element.A || post == element.B)
                    && nets.Of(post == element.A ? element.B : element.A) is var far)
                    yield return (Math.Min(far, nets.Of(common)), Math.Max(far, nets.Of(common)), false);
    }
}
