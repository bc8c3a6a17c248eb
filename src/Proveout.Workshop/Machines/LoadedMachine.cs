using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A machine as read from its file or folder.</summary>
/// <param name="Id">Identifier, as in addresses: the name of its file or folder.</param>
/// <param name="Path">Where it was read.</param>
/// <param name="Design">The machine.</param>
/// <param name="Fingerprint">SHA-256 of its files' text, hexadecimal.</param>
public sealed record LoadedMachine(string Id, string Path, MachineDesign Design, string Fingerprint)
{
    /// <summary>Its files as they were read.</summary>
    public IReadOnlyList<SourceText> Texts { get; init; } = [];

    /// <summary>The machine in a few words.</summary>
    public MachineSummary Summary => new(Id, Design.Name, Design.Summary, Design.Parts.Count, Design.Conductors.Count, Design.Mains is not null) { Guesses = Guess.In(Texts).Count };
}
