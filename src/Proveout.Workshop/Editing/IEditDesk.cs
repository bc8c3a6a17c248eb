using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Changes machines: each save is a revision, and nothing that somebody entered is lost.</summary>
public interface IEditDesk
{
    /// <summary>A machine in the editor; null when there is none of that identifier.</summary>
    EditView? View(string machineId);

    /// <summary>Makes a machine of one's own of the text of a machine file.</summary>
    /// <param name="name">What people call it; the text says it too afterwards.</param>
    /// <param name="text">A machine file.</param>
    /// <param name="person">Who makes it.</param>
    /// <param name="cancellation">Gives up before anything is written.</param>
    /// <returns>The machine, or why the text is none.</returns>
    Task<Outcome<MachineSummary>> CreateAsync(string name, string text, string person, CancellationToken cancellation);

    /// <summary>Copies a machine, so that the copy can be changed.</summary>
    Task<Outcome<MachineSummary>> CopyAsync(string machineId, string name, string person, CancellationToken cancellation);

    /// <summary>Saves edits; on a machine that somebody else changed meanwhile they are made again on what is there now, unless both changed the same thing.</summary>
    SaveAnswer Save(string machineId, SaveEdits request);

    /// <summary>Saves the text of a file; one that is no machine is kept as a draft, and the machine stays as it was.</summary>
    SaveAnswer Save(string machineId, SaveText request);

    /// <summary>What keeps a text from being the machine's file; empty when nothing does.</summary>
    IReadOnlyList<Diagnostic> Check(string machineId, string file, string text);

    /// <summary>Takes the last revision back.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="revision">Number of the machine's revision that the person saw.</param>
    /// <param name="person">Who.</param>
    SaveAnswer Undo(string machineId, int revision, string person);

    /// <summary>Makes the revision again that was taken back last.</summary>
    SaveAnswer Redo(string machineId, int revision, string person);

    /// <summary>A draft; null when there is none of that number.</summary>
    MachineDraft? Draft(string machineId, int number);

    /// <summary>The revisions of a machine, newest first; null when there is no such machine.</summary>
    IReadOnlyList<RevisionView>? Revisions(string machineId);

    /// <summary>The files of a machine at a revision; null when there is no such revision.</summary>
    IReadOnlyList<SourceText>? FilesAt(string machineId, int revision);

    /// <summary>The conductors of a machine as comma-separated values; null when there is no such machine.</summary>
    string? Wires(string machineId);

    /// <summary>What a wire list would change, or every row that cannot be used; nothing is saved.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="list">The list.</param>
    /// <param name="removeUnlisted">True when conductors that are not in the list are taken out.</param>
    Outcome<WireImport> LookAtWires(string machineId, NamedText list, bool removeUnlisted);
}
