namespace Proveout.Engine.Electrical;

/// <summary>How much a finding of the design review matters, worst last.</summary>
public enum FindingSeverity
{
    /// <summary>Not reviewed, because the design does not say what the rule asks.</summary>
    NotKnown,

    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Better changed; whoever leaves it should say why.</summary>
    Warning,

    /// <summary>To be changed before anything is energised.</summary>
    Error,
}
