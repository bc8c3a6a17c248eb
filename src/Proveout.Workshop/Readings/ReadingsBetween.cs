using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Says what a meter shows between two terminals that a person names.</summary>
public static class ReadingsBetween
{
    private const int MostNames = 24;
    private const string Plug = "plug";

    private static readonly string[] Sides = [Plug, "pins"];

    /// <summary>Both readings, or what is wrong with the names.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="red">A terminal such as <c>A1.OUT0+</c>; where plugs are apart <c>A1.OUT0+ (pins)</c> means the pin, else its plug's contact is meant.</param>
    /// <param name="black">Another one.</param>
    /// <param name="setUp">Identifier of the set-up; null for all plugs mated.</param>
    public static Outcome<BothWays> Of(LoadedMachine machine, string red, string black, string? setUp)
    {
        var setUps = DeadSetUps.Of(machine.Design);
        if (setUps.FirstOrDefault(candidate => candidate.Text.Id == (setUp ?? DeadSetUps.Mated)) is not { } state)
            return Outcome.Refused<BothWays>([NoSuchSetUp(machine, setUp!, setUps)]);
        var (first, firstProblem) = PointOf(machine, red, state);
        var (second, secondProblem) = PointOf(machine, black, state);
        if (first is null || second is null)
            return Outcome.Refused<BothWays>([.. new[] { firstProblem, secondProblem }.OfType<Diagnostic>()]);
        var (one, other) = new ExpectedReadings(machine.Design, state).Between(first, second);
        return Outcome.Of(new BothWays(state.Text, one, other));
    }

    /// <summary>The readings in every state of the plugs that matters, or what is wrong with the names.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="red">A terminal.</param>
    /// <param name="black">Another one.</param>
    /// <param name="shownOhms">What a meter shows there, in ohms, to be judged in each state; null when nothing was measured.</param>
    public static Outcome<PlugStateAnswer> InPlugStates(LoadedMachine machine, string red, string black, double? shownOhms)
    {
        var all = DeadSetUps.Of(machine.Design);
        var (first, firstProblem) = PointOf(machine, red, all[0]);
        var (second, secondProblem) = PointOf(machine, black, all[0]);
        if (first is null || second is null)
            return Outcome.Refused<PlugStateAnswer>([.. new[] { firstProblem, secondProblem }.OfType<Diagnostic>()]);
        var wiring = WiringNetworkBuilder.Build(machine.Design);
        var states = PlugStates.About(machine.Design, Terminal(first), Terminal(second));
        return Outcome.Of(new PlugStateAnswer(shownOhms, [.. states.Select(state => InState(wiring, state, first, second, shownOhms))]));
    }

    private static PlugStateReading InState(WiringNetwork wiring, ElectricalSetUp state, CheckPoint first, CheckPoint second, double? shownOhms)
    {
        var (one, other) = new ExpectedReadings(wiring, state.State).Between(SideIn(wiring, state.State, first), SideIn(wiring, state.State, second));
        return new PlugStateReading(new BothWays(state.Text, one, other), shownOhms is { } ohms ? one.Ohms.Contains(ohms) || other.Ohms.Contains(ohms) : null);
    }

    // A mated plug has no sides.
    private static CheckPoint SideIn(WiringNetwork wiring, MachineState state, CheckPoint point) =>
        wiring.Design.FindPart(point.Subject)!.Type.ConnectorOf(point.Place) is { } connector && state.IsPulled(point.Subject, connector.Name)
            ? point
            : point with { Side = "" };

    private static TerminalReference Terminal(CheckPoint point) => new(point.Subject, point.Place);

    private static (CheckPoint? Point, Diagnostic? Problem) PointOf(LoadedMachine machine, string text, ElectricalSetUp state)
    {
        var (name, side) = Split(text.Trim());
        if (TerminalReference.TryParse(name) is not { } terminal)
            return (null, NoSuchTerminal(machine, text, "Write a part and its terminal with a point between, such as `X1.L`."));
        if (machine.Design.FindPart(terminal.Part) is not { } part)
            return (null, NoSuchTerminal(machine, text, $"Its parts are {List(machine.Design.Parts.Select(candidate => candidate.Designation))}."));
        if (part.Type.FindTerminal(terminal.Terminal) is null)
            return (null, NoSuchTerminal(machine, text, $"The terminals of {part.Designation} are {List(part.Type.Terminals.Select(candidate => candidate.Name))}."));
        var isApart = state.State.PlugsApart && part.Type.ConnectorOf(terminal.Terminal) is { Pluggable: true };
        return (new CheckPoint(terminal.Part, terminal.Terminal, isApart ? side ?? Plug : ""), null);
    }

    private static (string Name, string? Side) Split(string text) =>
        Sides.FirstOrDefault(side => text.EndsWith($"({side})", StringComparison.Ordinal)) is { } side
            ? (text[..^(side.Length + 2)].TrimEnd(), side)
            : (text, null);

    private static Diagnostic NoSuchTerminal(LoadedMachine machine, string text, string mend) =>
        new("no-such-terminal", new SourcePlace(machine.Path, 0, 0), $"{machine.Design.Name} has no terminal `{text}`.", mend);

    private static Diagnostic NoSuchSetUp(LoadedMachine machine, string wanted, IReadOnlyList<ElectricalSetUp> setUps) => new(
        "no-such-set-up",
        new SourcePlace(machine.Path, 0, 0),
        $"{machine.Design.Name} has no set-up `{wanted}`.",
        $"Its set-ups are {List(setUps.Select(setUp => setUp.Text.Id))}.");

    private static string List(IEnumerable<string> names)
    {
        var all = names.Select(name => $"`{name}`").ToArray();
        return string.Join(", ", all.Take(MostNames)) + (all.Length > MostNames ? $" and {all.Length - MostNames} more" : "");
    }
}
