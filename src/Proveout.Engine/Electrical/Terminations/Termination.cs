namespace Proveout.Engine.Electrical;

/// <summary>How a conductor ends at a terminal.</summary>
/// <param name="Kind">What is put on its end.</param>
/// <param name="Words">The same in words, with its size.</param>
/// <param name="StripMm">Length to strip in millimetres; null when the part's own instructions say.</param>
/// <param name="TorqueNewtonMetres">Torque to fasten the screw with; null where there is none.</param>
public sealed record Termination(TerminationKind Kind, string Words, double? StripMm, double? TorqueNewtonMetres)
{
    /// <summary>True when a person makes it.</summary>
    public bool IsMade => Kind is not (TerminationKind.Stripped or TerminationKind.ReadyMade or TerminationKind.Unknown);
}
