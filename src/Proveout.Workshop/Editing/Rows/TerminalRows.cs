using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The terminals of a part as a table: what each carries, bears, and is wired to.</summary>
public static class TerminalRows
{
    /// <summary>One row for each terminal, in the order of the part type.</summary>
    public static IReadOnlyList<TerminalRow> Of(MachineDesign design, Part part)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(part);
        var landing = design.Conductors
            .SelectMany(conductor => new[] { (conductor.From, conductor.Id), (conductor.To, conductor.Id) })
            .ToLookup(end => end.Item1, end => end.Id);
        return
        [
            .. from terminal in part.Type.Terminals
               let reference = new TerminalReference(part.Designation, terminal.Name)
               select new TerminalRow(terminal.Name, reference.ToString(), WordsOf(terminal.Role), BearsOf(terminal), [.. landing[reference].Distinct(StringComparer.Ordinal)]),
        ];
    }

    private static string BearsOf(Terminal terminal) => string.Join(", ", new[]
    {
        terminal.Voltage is { } voltage ? ScheduleWords.Of(voltage) : "",
        terminal.Current is { } current ? ScheduleWords.Of(current) : "",
    }.Where(words => words.Length > 0));

    private static string WordsOf(TerminalRole role) => role switch
    {
        TerminalRole.Line => "mains, line",
        TerminalRole.Neutral => "mains, neutral",
        TerminalRole.ProtectiveEarth => "protective earth",
        TerminalRole.Positive => "positive pole",
        TerminalRole.ZeroVolt => "0 V",
        TerminalRole.Output => "an output",
        TerminalRole.Signal => "a signal",
        TerminalRole.Data => "data",
        TerminalRole.Winding => "a winding",
        TerminalRole.Passive => "what it is wired to",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "There is no such role."),
    };
}
