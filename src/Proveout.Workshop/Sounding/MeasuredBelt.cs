using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>A span with its note.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Note">Its note.</param>
/// <param name="Span">The span; null when length or mass is not known.</param>
internal sealed record MeasuredBelt(string Name, HeardNote Note, BeltSpan? Span)
{
    /// <summary>Its force; null when length or mass is not known.</summary>
    public Uncertain? Force => Span is null ? null : StringFormula.Force(Span, Note.Hertz);
}
