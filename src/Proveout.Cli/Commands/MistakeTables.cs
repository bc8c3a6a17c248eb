using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Prints the fewest checks, and what each mistake would do to them.</summary>
internal static class MistakeTables
{
    public static void Show(Terminal terminal, string title, MistakeTable table)
    {
        terminal.Say();
        terminal.Say(title);
        terminal.Warn(table.SetUps.SelectMany(setUp => setUp.Cautions).Distinct());
        foreach (var check in table.Checks)
            terminal.Say($"{check.Check.Title}: {check.Expected}. {check.Check.Instruction}");
        var sheet = new Sheet("Mistake", "What it does", "Surely shown by");
        foreach (var row in table.Mistakes)
            sheet.Add(row.Fault.Sentence, row.Fault.Consequence, row.CaughtBy.Count > 0 ? string.Join("; ", row.CaughtBy) : $"none; {row.Fault.OtherEvidence}");
        terminal.Show(sheet);
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{table.Mistakes.Count(row => row.CaughtBy.Count > 0)} of {table.Mistakes.Count} mistakes are surely shown. What was not thought of is not found."));
    }
}
