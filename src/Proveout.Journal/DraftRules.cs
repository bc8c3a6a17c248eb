using System.Text;

namespace Proveout.Journal;

/// <summary>What every store asks of a draft before it writes anything.</summary>
internal static class DraftRules
{
    public static void Require(BuildDraft draft)
    {
        RequireId(draft.Id);
        RequireText(draft.Serial, "The serial number");
        RequireText(draft.MachineName, "The name of the machine");
        RequireText(draft.Builder, "The name of the builder");
        RequireFingerprint(draft.MachineFingerprint, "The fingerprint of the machine file");
    }

    public static void Require(EntryDraft draft)
    {
        RequireId(draft.Key);
        RequireText(draft.Person, "The name of the person");
        RequireStorable(draft.Instrument, "The name of the instrument");
        RequireFinite(draft.Content);
        if (!ContentText.Read(ContentText.Write(draft.Content)).Equals(draft.Content))
            throw new DraftRefusedException("A text of the entry holds a character that cannot be stored. Type it anew.");
        RequireContent(draft.Content);
        if (draft.Content is PhotoAttached photo)
            RequirePhoto(photo, draft.FileBytes.Span);
        else if (draft.Content is MeasurementTaken { Sha256.Length: > 0 } taken)
            RequireWhole(KeptFile.Of(taken)!, draft.FileBytes.Span);
        else if (!draft.FileBytes.IsEmpty)
            throw new DraftRefusedException("The bytes of a file were handed over with an entry that attaches none.");
    }

    private static void RequireContent(EntryContent content)
    {
        switch (content)
        {
            case ReadingEntered entered:
                RequireReading(entered.Reading);
                break;
            case ReadingCorrected corrected:
                RequireReading(corrected.Reading);
                break;
            case PlanFixed plan:
                RequireFingerprint(plan.PlanFingerprint, "The fingerprint of the plan");
                break;
            case CheckSkipped skipped:
                RequireText(skipped.CheckId, "The check that was skipped");
                RequireText(skipped.Reason, "The reason for skipping the check");
                break;
            case Deviation deviation:
                RequireText(deviation.Note, "What differs");
                break;
            case DeviationAnswered { NotedAt: < 1 }:
                throw new DraftRefusedException("The answer names no entry. Say which deviation of which build is meant.");
            case PartReceived received:
                RequireText(received.Designation, "The part that came");
                break;
            case MeasurementTaken taken:
                MeasurementRules.Require(taken);
                break;
            case MistakeFound mistake:
                RequireText(mistake.FaultKind, "The kind of the mistake");
                RequireText(mistake.FaultId, "The mistake that was found");
                break;
            case SignedOff signed:
                RequireText(signed.Person, "The name of the person who signs");
                RequireText(signed.Statement, "The statement that is signed");
                break;
        }
    }

    private static void RequireId(Guid id)
    {
        if (id == Guid.Empty)
            throw new DraftRefusedException("The key is empty. Make a new one for each thing to record.");
    }

    internal static void RequireText(string text, string what)
    {
        if (string.IsNullOrWhiteSpace(text))
            throw new DraftRefusedException($"{what} is blank. Fill it in.");
        RequireStorable(text, what);
    }

    // Not every store can hold U+0000 in a text, and half a surrogate pair has no UTF-8 form: refused, not altered.
    private static void RequireStorable(string text, string what)
    {
        if (text.Contains('\0') || !IsWhole(text))
            throw new DraftRefusedException($"{what} holds a character that cannot be stored. Type it anew.");
    }

    private static bool IsWhole(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)) == text;

    private static void RequireFingerprint(string text, string what)
    {
        if (!Fingerprint.IsOne(text))
            throw new DraftRefusedException($"{what} is not a SHA-256 of 64 lower-case hexadecimal digits.");
    }

    private static void RequireReading(Reading reading)
    {
        RequireText(reading.CheckId, "The check that was read");
        if (reading is { OverRange: true, ValueSi: not null })
            throw new DraftRefusedException("The reading is over-range and yet has a value. Enter one or the other.");
    }

    // JSON has no way to write anything else.
    private static void RequireFinite(EntryContent content)
    {
        if (content is MeasurementTaken taken && taken.Results.Any(result => !double.IsFinite(result.Value) || !double.IsFinite(result.Expanded)))
            throw new DraftRefusedException("A result of the measurement is not a finite number. Leave it out.");
        var value = (content as ReadingEntered)?.Reading.ValueSi ?? (content as ReadingCorrected)?.Reading.ValueSi;
        if (value is { } number && !double.IsFinite(number))
            throw new DraftRefusedException("The value of a reading is not a finite number. Enter over-range as such, without a value.");
    }

    private static void RequirePhoto(PhotoAttached photo, ReadOnlySpan<byte> bytes)
    {
        RequireWhole(KeptFile.Of(photo)!, bytes);
        // An SVG can carry a script, which a browser would run as part of the page.
        var isPicture = photo.ContentType.StartsWith("image/", StringComparison.Ordinal);
        if (!isPicture || photo.ContentType.StartsWith("image/svg", StringComparison.Ordinal))
            throw new DraftRefusedException($"{photo.FileName} is no photograph ({photo.ContentType}). Attach a JPEG or PNG picture.");
    }

    private static void RequireWhole(KeptFile file, ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
            throw new DraftRefusedException($"The {file.Word} {file.FileName} is empty. Choose the file again.");
        if (bytes.Length != file.Length || Fingerprint.OfBytes(bytes) != file.Sha256)
            throw new DraftRefusedException($"The {file.Word} {file.FileName} did not arrive whole. Send it again.");
    }
}
