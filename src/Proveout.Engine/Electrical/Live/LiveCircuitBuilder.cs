using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Makes the live circuit of a machine.</summary>
internal sealed class LiveCircuitBuilder
{
    // A junction that conducts, a supply's output and a motor driver's, in ohms; from memory.
    private const double JunctionOhms = 0.02;
    private const double SupplyOhms = 0.01;
    private const double HeldOhms = 0.3;

    // A port that may be open: a megohm, which keeps it near its own board and carries no current worth a figure.
    private const double OpenPortSiemens = 1e-6;

    // A motor driver locks itself out below this feed; from memory.
    private const double DriverVolts = 7;

    private readonly WiringContext _context;
    private readonly Dictionary<(string Part, string Node), int> _nodes = [];
    private readonly Dictionary<(string Part, string Command), int> _commands = [];
    private readonly Dictionary<(string Part, string Control), int> _controlOf = [];
    private readonly List<LiveControl> _controls = [];
    private readonly List<LiveBranch> _branches = [];
    private readonly List<LiveDrive> _drives = [];
    private readonly List<LiveResidualTrip> _residualTrips = [];
    private int _nodeCount;

    private LiveCircuitBuilder(WiringContext context)
    {
        _context = context;
        _nodeCount = context.Wiring.Nodes.Count;
        foreach (var node in context.Wiring.Nodes)
            if (node.Kind is NodeKind.Terminal or NodeKind.Inside)
                _nodes[(node.Subject, node.Place)] = node.Index;
    }

    /// <summary>Makes the circuit.</summary>
    public static LiveCircuit Build(WiringContext context, MainsSource? mains)
    {
        var builder = new LiveCircuitBuilder(context);
        foreach (var part in context.Design.Parts)
            builder.AddControls(part);
        foreach (var element in context.Wiring.Elements)
            builder.AddWiring(element);
        foreach (var part in context.Design.Parts)
            builder.AddLive(part);
        if (mains is not null)
            builder.AddMains(mains);
        return new(
            context,
            mains,
            builder._nodeCount,
            [.. builder._branches],
            [.. builder._controls],
            [.. builder._drives],
            [.. builder._residualTrips],
            builder._commands);
    }

    private void AddMains(MainsSource mains)
    {
        MainsBranches.Add(_context, mains, NewNode, _branches);
        if (mains.ResidualAmperes is { } rated)
            _residualTrips.Add(new(
                MainsBranches.Subject,
                [.. _branches
                    .Where(branch => branch is { Subject: MainsBranches.Subject, Name: MainsBranches.Breaker or MainsBranches.Neutral })
                    .Select(branch => branch.Index)],
                rated));
    }

    private int NewNode() => _nodeCount++;

    private int Node(string part, string name) =>
        _nodes.TryGetValue((part, name), out var node) ? node : _nodes[(part, name)] = NewNode();

    private void AddControls(Part part)
    {
        foreach (var control in part.Type.Controls)
        {
            _controlOf[(part.Designation, control.Name)] = _controls.Count;
            string[] positions = [.. control.Positions];
            _controls.Add(new(part.Designation, control.Name, positions, Array.IndexOf(positions, control.Rest)));
        }
    }

    private void AddWiring(NetworkElement element)
    {
        var (kind, siemens) = element.Part switch
        {
            Diode when IsReplaced(element) => (LiveBranchKind.Path, 0.0),
            Diode => (LiveBranchKind.Junction, 1 / JunctionOhms),
            Unpredictable when IsReplaced(element) => (LiveBranchKind.Path, 0.0),
            Unpredictable when double.IsPositiveInfinity(element.HighOhms) => (LiveBranchKind.Path, OpenPortSiemens),
            Insulation insulation => (LiveBranchKind.Path, 1 / insulation.AtLeast.Ohms),
            Contact => (LiveBranchKind.Contact, 1 / element.NominalOhms),
            _ => (LiveBranchKind.Path, 1 / element.NominalOhms),
        };
        var branch = new LiveBranch(element.Index, kind, element.A, element.B, siemens, element.Subject, element.Name, element.Part);
        _branches.Add(element.Part switch
        {
            Diode diode => branch with { Volts = (diode.ForwardLow.Volts + diode.ForwardHigh.Volts) / 2 },
            Contact contact => branch with { Control = _controlOf[(element.Subject, contact.Control)], ClosedAt = ClosedAt(element.Subject, contact) },
            Fuse { Rating: { } rating } fuse when fuse.Curve != FuseCurve.Thermal =>
                branch with { RatedAmperes = rating.Amperes, Curve = fuse.Curve ?? FuseCurve.TimeLag },
            _ => branch,
        });
    }

    // A consumer stands for what a dead meter sees between the same nodes; of a junction only for one in its own direction.
    private bool IsReplaced(NetworkElement element) =>
        _context.Design.FindPart(element.Subject)!.Type.Circuit.OfType<Consumer>().Any(consumer =>
            (consumer.A == element.Part!.A && consumer.B == element.Part.B)
            || (element.Part is Unpredictable && consumer.A == element.Part.B && consumer.B == element.Part.A));

    private ulong ClosedAt(string part, Contact contact)
    {
        var positions = _controls[_controlOf[(part, contact.Control)]].Positions;
        return contact.ClosedAt.Aggregate(0UL, (bits, position) => bits | (1UL << Array.IndexOf(positions, position)));
    }

    private void AddLive(Part part)
    {
        foreach (var element in part.Type.Circuit)
            switch (element)
            {
                case Capacitor capacitor:
                    Add(part, element, LiveBranchKind.Capacitor, 0, branch => branch with { Farads = capacitor.Value.Farads });
                    break;
                case FilterCapacitor filter:
                    Add(part, element, LiveBranchKind.Capacitor, 0, branch => branch with { Farads = filter.Value.Farads });
                    break;
                case Consumer consumer:
                    Add(part, element, LiveBranchKind.Path, consumer.Current.Amperes / consumer.Voltage.Volts, branch => branch);
                    break;
                case SwitchedPath path:
                    Add(part, element, LiveBranchKind.Switch, 1 / path.Value.Nominal.Ohms, branch => branch with
                    {
                        Command = path.Command.Length > 0 ? Command(part, path.Command) : -1,
                        Port = path.Port.Count == 2 ? PortOf(part, path.Port[0], path.Port[1], path.AtLeast!.Value.Volts) : null,
                    });
                    break;
                case Source source:
                    AddSource(part, source);
                    break;
                case HeldCurrent held:
                    AddHeld(part, held);
                    break;
                case Drive drive:
                    var control = _controlOf[(part.Designation, drive.Control)];
                    _drives.Add(new(
                        Node(part.Designation, drive.A),
                        Node(part.Designation, drive.B),
                        control,
                        Array.IndexOf(_controls[control].Positions, drive.Position),
                        drive.PullsIn.Volts,
                        drive.DropsOut.Volts));
                    break;
                case ResidualTrip trip:
                    _residualTrips.Add(new(
                        part.Designation,
                        [.. _context.Wiring.Elements
                            .Where(found => found.Subject == part.Designation && trip.Opens.Contains(found.Name, StringComparer.Ordinal))
                            .Select(found => found.Index)],
                        trip.Current.Amperes));
                    break;
            }
    }

    private void AddSource(Part part, Source source)
    {
        var fed = source.Feed is { } feed ? PortOf(part, feed.A, feed.B, feed.From.Volts) : ((int, int, double)?)null;
        var input = fed is null ? -1 : AddInput(part, source.Name, source.Feed!.A, source.Feed.B);
        Add(part, source, LiveBranchKind.Supply, 1 / SupplyOhms, branch => branch with
        {
            Volts = source.Voltage.Volts,
            LimitAmperes = source.Limit?.Amperes ?? double.PositiveInfinity,
            Port = fed,
            FedByMains = source.Feed is { } on && part.Type.FindTerminal(on.A)?.Role == TerminalRole.Line,
            Input = input,
            ShutsOff = source.ShutsOff,
        });
    }

    private void AddHeld(Part part, HeldCurrent held)
    {
        var input = AddInput(part, held.Name, held.Feed[0], held.Feed[1]);
        Add(part, held, LiveBranchKind.Held, 1 / HeldOhms, branch => branch with
        {
            LimitAmperes = held.Current.Amperes,
            Port = PortOf(part, held.Feed[0], held.Feed[1], DriverVolts),
            Input = input,
            Command = Command(part, held.Command),
        });
    }

    private int AddInput(Part part, string name, string a, string b)
    {
        _branches.Add(new(
            _branches.Count, LiveBranchKind.Input, Node(part.Designation, a), Node(part.Designation, b), 0, part.Designation, name, null));
        return _branches.Count - 1;
    }

    private (int A, int B, double Volts) PortOf(Part part, string a, string b, double volts) =>
        (Node(part.Designation, a), Node(part.Designation, b), volts);

    private int Command(Part part, string name)
    {
        if (!_commands.TryGetValue((part.Designation, name), out var command))
            _commands[(part.Designation, name)] = command = _commands.Count;
        return command;
    }

    private void Add(Part part, CircuitElement element, LiveBranchKind kind, double siemens, Func<LiveBranch, LiveBranch> complete) =>
        _branches.Add(complete(new(
            _branches.Count,
            kind,
            Node(part.Designation, element.A),
            Node(part.Designation, element.B),
            siemens,
            part.Designation,
            element.Name,
            element)));
}
