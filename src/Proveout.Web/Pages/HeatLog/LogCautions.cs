namespace Proveout.Web.Pages.HeatLog;

/// <summary>What can hurt whoever logs a heater; common practice.</summary>
internal static class LogCautions
{
    public static IReadOnlyList<string> All { get; } =
    [
        "While you log, stay beside the machine with one hand on its switch; switch off when anything smells, glows or smokes.",
        "Its independent thermal cut-off is fitted and was tested. Before a hand goes to heater or sensor: switch off, isolate, let it cool.",
    ];
}
