using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>Says why something cannot be done.</summary>
internal static class Refusing
{
    /// <summary>Shows every diagnostic: on the error stream, or as JSON where data was asked for.</summary>
    public static int Refuse(this Terminal terminal, IReadOnlyList<Diagnostic> diagnostics, bool asJson = false)
    {
        if (asJson)
            terminal.Show(RefusalShape.Of(diagnostics), JsonShapes.Spread.RefusalShape);
        else
            foreach (var diagnostic in diagnostics)
                terminal.Complain(diagnostic.ToString().TrimEnd());
        return ExitCode.BadInput;
    }

    /// <summary>Shows one sentence.</summary>
    public static int Refuse(this Terminal terminal, string rule, string about, string message, string mend, bool asJson = false) =>
        terminal.Refuse([new Diagnostic(rule, new SourcePlace(about, 0, 0), message, mend)], asJson);
}
