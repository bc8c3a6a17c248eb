namespace Proveout.Engine.Machine;

/// <summary>One difference between two designs.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Rank">How dangerous what it is about is, by the roles of the terminals and the colour.</param>
/// <param name="Subjects">Designations, identifiers and names that it is about.</param>
/// <param name="Sentence">What differs, in trade words.</param>
public sealed record DesignChange(ChangeKind Kind, ChangeRank Rank, ValueList<string> Subjects, string Sentence)
{
    /// <summary>Terminals of either design that hands are at when the change is made.</summary>
    public ValueList<TerminalReference> Terminals { get; init; } = [];

    /// <summary>True when only names or papers differ, and nobody touches the machine.</summary>
    public bool IsOnPaperOnly => Kind is ChangeKind.PartRenamed or ChangeKind.ConductorRenamed or ChangeKind.MistakesChanged
        or ChangeKind.TitleChanged or ChangeKind.PartMeasured;
}
