using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What became of a save.</summary>
/// <param name="Revision">Number of the revision that it made, or that the machine is at; 0 when the machine was never changed.</param>
/// <param name="Problems">Why nothing was saved; empty when something was.</param>
/// <param name="Conflicts">What somebody else has changed meanwhile; nothing is saved before a person has chosen.</param>
public sealed record SaveAnswer(int Revision, IReadOnlyList<Diagnostic> Problems, IReadOnlyList<EditConflict> Conflicts)
{
    /// <summary>Number of the draft that keeps what was entered; 0 when none was needed.</summary>
    public int Draft { get; init; }

    /// <summary>True when the machine holds the change.</summary>
    public bool IsSaved => Problems.Count == 0 && Conflicts.Count == 0;

    internal static SaveAnswer Refuse(int revision, params IReadOnlyList<Diagnostic> problems) => new(revision, problems, []);
}
