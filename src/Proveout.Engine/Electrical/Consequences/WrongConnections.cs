using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What steady voltages do not show: data conductors, and sensors of one kind that have changed places.</summary>
/// <remarks>
/// A data terminal must be one metal with the same other terminals as in the sound machine, and what ends a data line must be there; a board's signal terminal with the same other
/// parts, since which lead of a sensor is which does not matter where the voltages are right.
/// </remarks>
internal sealed class WrongConnections
{
    private readonly LiveModel _model;
    private readonly (TerminalReference Terminal, int Node, bool IsData, bool IsBoardSignal)[] _wired;
    private readonly string[] _sound;

    public WrongConnections(LiveModel model)
    {
        _model = model;
        var design = model.Context.Design;
        _wired =
        [
            .. from terminal in design.Conductors.SelectMany(conductor => new[] { conductor.From, conductor.To }).Distinct()
               let role = design.FindTerminal(terminal)!.Role
               select (
                   terminal,
                   model.Context.Wiring.TerminalNode(terminal),
                   role == TerminalRole.Data,
                   role == TerminalRole.Signal && design.FindPart(terminal.Part)!.Type.ClassLetter == "A"),
        ];
        _sound = Partners([]);
    }

    /// <summary>A terminal that is not joined to what it should be; null when all are.</summary>
    public LiveFinding? Find(IReadOnlyList<ElementChange> changes, ControlState state)
    {
        var faulty = Partners(changes);
        foreach (var element in changes.OfType<Cut>().Select(cut => _model.Context.Wiring.Elements[cut.Element]))
            if (element.Kind is ElementKind.Jumper or ElementKind.Inside && (IsData(element.A) || IsData(element.B)))
                return new(
                    LiveFindingKind.WrongConnection, Severity.DoesNotWork, $"{element.Subject}.{element.Name}", 0, 0, "", state,
                    $"{element.Name} of {element.Subject} is missing from a data line, so data fail or come and go.");
        for (var at = 0; at < _wired.Length; at++)
            if (faulty[at] != _sound[at])
                return new(
                    LiveFindingKind.WrongConnection, Severity.DoesNotWork, _wired[at].Terminal.ToString(), 0, 0, "", state,
                    $"{_wired[at].Terminal} is joined to {Words(faulty[at])} instead of {Words(_sound[at])}: what runs over it does not work.");
        return null;
    }

    private bool IsData(int node) => _model.Context.Wiring.Nodes[node] is { Kind: NodeKind.Terminal } terminal
        && _model.Context.Design.FindTerminal(new(terminal.Subject, terminal.Place))!.Role == TerminalRole.Data;

    private static string Words(string partners) => partners.Length == 0 ? "nothing" : partners;

    private string[] Partners(IReadOnlyList<ElementChange> changes)
    {
        var pieces = new MetalPieces(new ChangedCircuit(_model.Circuit, changes, null), _ => true);
        int[] nets = [.. _wired.Select(item => pieces.Of(item.Node))];
        var members = Enumerable.Range(0, _wired.Length).ToLookup(at => nets[at]);
        return [.. _wired.Select((item, at) => item switch
        {
            { IsData: true } => Join(members[nets[at]].Where(other => other != at).Select(other => _wired[other].Terminal.ToString())),
            { IsBoardSignal: true } => Join(members[nets[at]].Select(other => _wired[other].Terminal.Part).Where(part => part != item.Terminal.Part)),
            _ => "",
        })];
    }

    private static string Join(IEnumerable<string> names) => string.Join(", ", names.Distinct().Order(StringComparer.Ordinal));
}
