namespace Proveout.Journal.Tests;

/// <summary>Builds and entries to record, of our own invention.</summary>
internal static class Drafts
{
    public static readonly string MachineFile = Fingerprint.OfText("format: proveout-machine 1\n");

    public static BuildDraft Build(string serial = "001") => new(Guid.NewGuid(), serial, "Small oven", MachineFile, "Ada Example");

    public static EntryDraft Of(EntryContent content) => new(Guid.NewGuid(), "Ada Example", "bench meter", content);

    public static EntryDraft Note(string text) => Of(new NoteWritten(text));

    public static Reading Reading(string text, double? value) => new("E1-element", "mains switch off", text, value, value is null, "ohm", "pass");

    public static EntryDraft Photo(params byte[] bytes) =>
        EntryDraft.OfPhoto(Guid.NewGuid(), "Ada Example", "X1", "inlet.jpg", "image/jpeg", bytes, "The inlet from behind");

    public static EntryDraft Measurement(params byte[] bytes) => EntryDraft.OfMeasurement(
        Guid.NewGuid(), "Ada Example", new MeasurementTaken("frame", "Diagonals", "Out of square.", [new("Skew", 0.4, 0.1, "mm")], "{}", "frame.csv", "text/csv", "", 0), bytes);

    /// <summary>One content of each kind.</summary>
    public static IReadOnlyList<EntryContent> EveryKind { get; } =
    [
        new PlanFixed("dead tests", MachineFile, ["E1-element", "X1-bonding"]),
        new InstrumentDeclared("bench meter", "hand-held, 4000 counts", LeadsZeroed: true),
        new ReadingEntered(Reading("105,8 Ω", 105.8)),
        new ReadingCorrected(3, Reading("0L", null)),
        new CheckSkipped("X1-bonding", "The lid is not there yet."),
        new Deviation("W7", "Blue instead of black."),
        new PhotoAttached("X1", "inlet.jpg", "image/jpeg", Fingerprint.OfBytes([1, 2, 3]), 3, "The inlet from behind"),
        new NoteWritten("Warm to the touch: \"60 °C\" <&> 60 °C"),
        new SignedOff("Ada Example", "builder", "All dead tests were made."),
        new PartReceived("A1", PartArrival.Different, "Its fuse is 10 A."),
        new MeasurementTaken("level", "Plate after one hour", "Tilted by 0.3 mm.", [new("Tilt", 0.31, 0.02, "mm")], "{\"pitch\":\"0,5\"}", "", "", "", 0),
        new MistakeFound("ends-swapped", "ends-swapped:W7", "Swapped back at X1."),
        new DeviationAnswered(Guid.Parse("0198c0de-0000-7000-8000-000000000001"), 6, Holds: true, "Blue here too."),
    ];
}
