namespace Proveout.Workshop;

/// <summary>A revision of a machine: who saved what, and the whole text that it left.</summary>
/// <param name="Number">Its number; each machine counts from 1.</param>
/// <param name="Kind">How it came about.</param>
/// <param name="Of">Number of the revision that it takes back or makes again; 0 when neither.</param>
/// <param name="Time">When.</param>
/// <param name="Person">Who; empty when nobody said.</param>
/// <param name="What">What was changed, in a few words.</param>
/// <param name="Fingerprints">Fingerprints of the machine and of its stages.</param>
/// <param name="Files">The files; none when only the revision's head was asked for.</param>
public sealed record SavedRevision(
    int Number, RevisionKind Kind, int Of, DateTimeOffset Time, string Person, string What, IReadOnlyList<string> Fingerprints, IReadOnlyList<NamedText> Files);
