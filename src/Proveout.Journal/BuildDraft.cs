namespace Proveout.Journal;

/// <summary>A build about to be started. Starting the same draft twice starts one build.</summary>
/// <param name="Id">Identifier of the build, made by the caller so that a repeated request does no harm.</param>
/// <param name="Serial">Serial number, not blank.</param>
/// <param name="MachineName">Name of the machine, not blank.</param>
/// <param name="MachineFingerprint">64 lower-case hexadecimal digits; see <see cref="Fingerprint.OfText"/>.</param>
/// <param name="Builder">Person or workshop that builds it, not blank.</param>
public sealed record BuildDraft(Guid Id, string Serial, string MachineName, string MachineFingerprint, string Builder);
