namespace Proveout.Workshop;

/// <summary>Cells that a spreadsheet would take for a formula are led by an apostrophe on the way out, and lose it on the way in.</summary>
/// <remarks>OWASP, "CSV Injection" (from memory): equals sign, plus, minus, at, tab and carriage return begin what may be run.</remarks>
internal static class GuardedCell
{
    private const char Guard = '\'';

    /// <summary>A cell that nothing runs; one that begins with an apostrophe of its own gets another, so that it comes back as it was.</summary>
    public static string Out(string text) => IsRisky(text) || text is [Guard, ..] ? Guard + text : text;

    /// <summary>The text of a guarded cell.</summary>
    public static string In(string cell) => cell is [Guard, .. var rest] && (IsRisky(rest) || rest is [Guard, ..]) ? rest : cell;

    private static bool IsRisky(string text) => text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..];
}
