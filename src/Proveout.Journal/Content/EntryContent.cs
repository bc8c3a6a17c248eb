using System.Text.Json.Serialization;

namespace Proveout.Journal;

/// <summary>
/// What an entry records: a closed family, meant to be matched on.
/// The kinds, the names and the order of their fields are part of the stored form and are never changed, only added to.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(PlanFixed), "plan-fixed")]
[JsonDerivedType(typeof(InstrumentDeclared), "instrument-declared")]
[JsonDerivedType(typeof(ReadingEntered), "reading-entered")]
[JsonDerivedType(typeof(ReadingCorrected), "reading-corrected")]
[JsonDerivedType(typeof(CheckSkipped), "check-skipped")]
[JsonDerivedType(typeof(Deviation), "deviation")]
[JsonDerivedType(typeof(PhotoAttached), "photo-attached")]
[JsonDerivedType(typeof(NoteWritten), "note-written")]
[JsonDerivedType(typeof(SignedOff), "signed-off")]
[JsonDerivedType(typeof(MistakeFound), "mistake-found")]
[JsonDerivedType(typeof(PartReceived), "part-received")]
[JsonDerivedType(typeof(MeasurementTaken), "measurement-taken")]
[JsonDerivedType(typeof(DeviationAnswered), "deviation-answered")]
public abstract record EntryContent
{
    private protected EntryContent()
    {
    }
}

/// <summary>The check plan that the build follows from here on.</summary>
/// <param name="PlanId">Name of the plan.</param>
/// <param name="PlanFingerprint">SHA-256 of the plan, 64 lower-case hexadecimal digits.</param>
/// <param name="CheckIds">The checks, in the order in which they are to be made.</param>
public sealed record PlanFixed(string PlanId, string PlanFingerprint, IReadOnlyList<string> CheckIds) : EntryContent
{
    /// <summary>Equal when the plan and the checks, in order, are.</summary>
    public bool Equals(PlanFixed? other) =>
        other is not null && PlanId == other.PlanId && PlanFingerprint == other.PlanFingerprint && CheckIds.SequenceEqual(other.CheckIds);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(PlanId, PlanFingerprint, CheckIds.Count);
}

/// <summary>An instrument that readings are taken with from here on.</summary>
/// <param name="Name">The name that entries give as their instrument.</param>
/// <param name="Model">What it is, in words.</param>
/// <param name="LeadsZeroed">The resistance of the leads was taken off before use.</param>
public sealed record InstrumentDeclared(string Name, string Model, bool LeadsZeroed) : EntryContent;

/// <summary>A reading taken at a check.</summary>
/// <param name="Reading">What was read.</param>
public sealed record ReadingEntered(Reading Reading) : EntryContent;

/// <summary>A reading that stands in the place of an earlier one of the same check; the earlier entry stays in the record.</summary>
/// <param name="Corrects">Sequence of the entry it corrects: a reading, or an earlier correction.</param>
/// <param name="Reading">What should have been entered.</param>
public sealed record ReadingCorrected(int Corrects, Reading Reading) : EntryContent;

/// <summary>A check that was not made.</summary>
/// <param name="CheckId">The check of the plan.</param>
/// <param name="Reason">Why not.</param>
public sealed record CheckSkipped(string CheckId, string Reason) : EntryContent;

/// <summary>Something about this build that differs from the machine file or from the guide.</summary>
/// <param name="Subject">What differs: a designation, a check, a step.</param>
/// <param name="Note">How.</param>
public sealed record Deviation(string Subject, string Note) : EntryContent;

/// <summary>A photograph; its bytes are kept beside the record under their fingerprint.</summary>
/// <param name="Subject">Id of the check, or any other thing that it shows.</param>
/// <param name="FileName">Name of the file as it was handed over.</param>
/// <param name="ContentType">Media type, <c>image/…</c>.</param>
/// <param name="Sha256">SHA-256 of the bytes, 64 lower-case hexadecimal digits.</param>
/// <param name="Length">Number of bytes.</param>
/// <param name="Caption">What is to be seen; may be empty.</param>
public sealed record PhotoAttached(
    string Subject, string FileName, string ContentType, string Sha256, long Length, string Caption) : EntryContent;

/// <summary>Anything else worth keeping.</summary>
/// <param name="Text">The note.</param>
public sealed record NoteWritten(string Text) : EntryContent;

/// <summary>A person puts their name to a statement.</summary>
/// <param name="Person">Who signs.</param>
/// <param name="Role">In which capacity.</param>
/// <param name="Statement">What they state.</param>
public sealed record SignedOff(string Person, string Role, string Statement) : EntryContent;

/// <summary>A mistake that was found in this build and mended; the journals of a workshop teach from these how often each kind is made.</summary>
/// <param name="FaultKind">Kind of the fault, as the fault list of the machine names it.</param>
/// <param name="FaultId">Identifier of the fault in the fault list of the machine.</param>
/// <param name="Note">How it was found or mended; may be empty.</param>
public sealed record MistakeFound(string FaultKind, string FaultId, string Note) : EntryContent;

/// <summary>What came of a part when the parcel was opened; a later one of the same part stands in the place of an earlier one.</summary>
/// <param name="Designation">The part.</param>
/// <param name="Arrival">What came.</param>
/// <param name="Note">In what it differs, or what was done about it; may be empty.</param>
public sealed record PartReceived(string Designation, PartArrival Arrival, string Note) : EntryContent;

/// <summary>What this build found of a deviation that another build of the machine noted; a later one stands in the place of an earlier one.</summary>
/// <param name="NotedIn">Identifier of the build that noted it.</param>
/// <param name="NotedAt">Sequence of the entry there.</param>
/// <param name="Holds">True when it is so here too.</param>
/// <param name="Note">What was seen; may be empty.</param>
public sealed record DeviationAnswered(Guid NotedIn, int NotedAt, bool Holds, string Note) : EntryContent;
