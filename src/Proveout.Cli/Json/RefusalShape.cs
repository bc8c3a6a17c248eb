using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>Why nothing was done.</summary>
internal sealed record RefusalShape(string Format, IReadOnlyList<DiagnosticShape> Diagnostics)
{
    public static RefusalShape Of(IReadOnlyList<Diagnostic> diagnostics) => new("proveout-refusal 1", [.. diagnostics.Select(DiagnosticShape.Of)]);
}

/// <summary>One thing that is wrong with what was given.</summary>
internal sealed record DiagnosticShape(string Rule, string File, int? Line, int? Column, string Message, string Mend)
{
    public static DiagnosticShape Of(Diagnostic diagnostic) => new(
        diagnostic.Rule,
        diagnostic.Place.File,
        diagnostic.Place.Line == 0 ? null : diagnostic.Place.Line,
        diagnostic.Place.Column == 0 ? null : diagnostic.Place.Column,
        diagnostic.Message,
        diagnostic.Mend);
}
