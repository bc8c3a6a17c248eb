using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Electrical;

/// <summary>What each output of a machine's controllers drives and each input reads: what whoever sets up the controller has to know.</summary>
/// <remarks>Found by running the sound machine live with each output commanded and each contact operated, so it holds for whatever lies between.</remarks>
public static class ControllerAssignments
{
    private const string BoardLetter = "A";

    // A contact swings an input by the whole of its supply; the rest is what leads and protection share out.
    private const double LeastSwingVolts = 1;

    /// <summary>The outputs of every part that takes commands, in the order of the machine file.</summary>
    public static IReadOnlyList<OutputAssignment> Outputs(LiveModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var checks = new LiveChecks(model);
        return
        [
            .. checks.Everything.Commands.Select(command => OutputOf(checks, command, model.States.First(state =>
                state.Commands.Contains(command) && (state.Kind == ControlStateKind.OneOutput || checks.Everything.Commands.Count == 1)))),
        ];
    }

    /// <summary>The inputs that a sensor or a contact hangs on.</summary>
    public static IReadOnlyList<InputAssignment> Inputs(LiveModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var checks = new LiveChecks(model);
        var wired = SensorWiring.Of(model.Context.Wiring).ToArray();
        InputAssignment[] contacts = [.. Signals(model.Context).SelectMany(signal => ContactsAt(checks, signal, wired))];
        var taken = contacts.Select(input => (input.Part, input.Terminal)).ToHashSet();
        return
        [
            .. contacts,
            .. wired
                .Where(pair => pair.Board.Type.ClassLetter == BoardLetter && !taken.Contains((pair.Board.Designation, pair.Reads.Name)))
                .Select(pair => SensorAt(checks, pair)),
        ];
    }

    private static OutputAssignment OutputOf(LiveChecks checks, (string Part, string Command) command, ControlState on)
    {
        var (rest, alone) = (checks.Sound(checks.Resting), checks.Sound(on));
        LiveBranch[] paths = [.. checks.Model.Circuit.Branches.Where(branch => branch.Subject == command.Part && CommandOf(branch.Element) == command.Command)];
        var terminals = paths
            .SelectMany(path => new[] { path.Element!.A, path.Element.B })
            .Select(name => checks.Model.Context.Design.FindPart(command.Part)!.Type.FindTerminal(name))
            .OfType<Terminal>()
            .Where(terminal => terminal.Role == TerminalRole.Output || Terminals.IsWired(checks.Model.Context, new(command.Part, terminal.Name)))
            .Select(terminal => terminal.Name);
        return new(
            command.Part,
            command.Command,
            [.. terminals.Distinct(StringComparer.Ordinal)],
            [.. WiredTo(checks.Model.Context, command.Part, terminals)],
            [
                .. checks.Loads
                    .Where(load => load.Works(alone) == Seen.Right && load.Works(rest) != Seen.Right)
                    .Select(load => new DrivenLoad(load.Part.Designation, load.Part.Name, load.AtWork)),
            ],
            ElectricCurrent.FromAmperes(paths.Max(path => Math.Abs(alone.Solution.DcAmperes(path.Index)))),
            paths.Any(path => path.Element is HeldCurrent));
    }

    private static IEnumerable<string> WiredTo(WiringContext context, string part, IEnumerable<string> terminals) =>
        (from terminal in terminals
         from conductor in context.ConductorsAt(new(part, terminal))
         select conductor.From == new TerminalReference(part, terminal) ? conductor.To.Part : conductor.From.Part).Distinct(StringComparer.Ordinal);

    private static string CommandOf(CircuitElement? element) => element switch
    {
        SwitchedPath path => path.Command,
        HeldCurrent held => held.Command,
        _ => "",
    };

    private static IEnumerable<(Part Part, TerminalReference Terminal)> Signals(WiringContext context) =>
        from part in context.Design.Parts
        where part.Type.ClassLetter == BoardLetter
        from terminal in part.Type.Terminals
        where terminal.Role == TerminalRole.Signal && Terminals.IsWired(context, new(part.Designation, terminal.Name))
        select (part, new TerminalReference(part.Designation, terminal.Name));

    private static IEnumerable<InputAssignment> ContactsAt(LiveChecks checks, (Part Part, TerminalReference Terminal) signal, SensorWiring[] wired)
    {
        var reads = signal.Part.Type.FindTerminal(signal.Terminal.Terminal)!;
        return
            from state in checks.Model.States
            where state.Kind == ControlStateKind.Sensing || (state.Kind == ControlStateKind.Stopped && IsPowered(checks, signal.Part, state))
            let rest = Volts(checks, signal, state.Kind == ControlStateKind.Stopped ? checks.Everything : checks.Resting)
            let operated = Volts(checks, signal, state)
            where Math.Abs(operated - rest) >= LeastSwingVolts
            let sensor = checks.Model.Context.Design.FindPart(state.Positions[0].Part)!
            select new InputAssignment(
                signal.Part.Designation,
                signal.Terminal.Terminal,
                sensor.Designation,
                sensor.Name,
                Agreed(wired.FirstOrDefault(pair => pair.Sensor == sensor && pair.Board == signal.Part && pair.Reads == reads)),
                state.Positions[0].Position,
                ElectricPotential.FromVolts(rest),
                ElectricPotential.FromVolts(operated));
    }

    // A stop that takes the board's supply away says nothing to its inputs.
    private static bool IsPowered(LiveChecks checks, Part board, ControlState state) =>
        checks.Loads.Where(load => load.Part == board).All(load => load.Works(checks.Sound(state)) == Seen.Right);

    private static InputAssignment SensorAt(LiveChecks checks, SensorWiring pair)
    {
        var volts = ElectricPotential.FromVolts(Volts(checks, (pair.Board, new(pair.Board.Designation, pair.Reads.Name)), checks.Resting));
        return new(pair.Board.Designation, pair.Reads.Name, pair.Sensor.Designation, pair.Sensor.Name, Agreed(pair), "", volts, volts);
    }

    private static SensorKind[] Agreed(SensorWiring? pair) => pair is null ? [] : [.. pair.Gives.Sensors.Intersect(pair.Reads.Sensors)];

    private static double Volts(LiveChecks checks, (Part Part, TerminalReference Terminal) signal, ControlState state)
    {
        var context = checks.Model.Context;
        return Terminals.ZeroOf(context.Design, signal.Part, signal.Terminal.Terminal) is { } zero
            ? checks.Sound(state).DirectVolts(LivePlace.Mated(context, signal.Terminal).Node, LivePlace.Mated(context, zero).Node)
            : 0;
    }
}
