using System.Globalization;
using System.Text;

namespace Proveout.Journal.Trials;

/// <summary>The record that stands in the files kept of each format under tests/Proveout.Journal.Tests/Kept: always the same drafts.</summary>
public static class KeptRecord
{
    private static readonly string MachineFile = Fingerprint.OfText("format: proveout-machine 1\n");

    /// <summary>Two builds; the second has no entries.</summary>
    public static IReadOnlyList<BuildDraft> Builds { get; } =
    [
        new(Key("build 1"), "K-1", "Small oven", MachineFile, "Ada Example"),
        new(Key("build 2"), "K-2", "Small oven", MachineFile, "Bo Example"),
    ];

    /// <summary>One entry of each kind, with a photograph that does not fit into one page of a database and a data file.</summary>
    public static IReadOnlyList<EntryDraft> Entries { get; } =
    [
        Of(new PlanFixed("dead tests", MachineFile, ["E1-element", "X1-bonding"])),
        Of(new InstrumentDeclared("bench meter", "hand-held, 4000 counts", LeadsZeroed: true)),
        Of(new ReadingEntered(new Reading("E1-element", "mains switch off", "105,8 Ω", 105.8, false, "ohm", "pass"))),
        Of(new ReadingCorrected(3, new Reading("E1-element", "mains switch off", "0L", null, true, "", "fail"))),
        Of(new CheckSkipped("X1-bonding", "The lid is not there yet.")),
        Of(new Deviation("W7", "Blue instead of black.")),
        EntryDraft.OfPhoto(Key("photo"), "Ada Example", "X1", "inlet.jpg", "image/jpeg", Bytes(20_000), "The inlet from behind"),
        Of(new NoteWritten("Warm to the touch: \"60 °C\" <&> 60 °C")),
        Of(new SignedOff("Ada Example", "builder", "All dead tests were made.")),
        Of(new PartReceived("A1", PartArrival.Different, "Its fuse is 10 A.")),
        EntryDraft.OfMeasurement(
            Key("measurement"),
            "Ada Example",
            new MeasurementTaken("level", "Plate after one hour", "Tilted by 0.3 mm.", [new("Tilt", 0.31, 0.02, "mm")], "{\"pitch\":\"0,5\"}", "plate.csv", "text/csv", "", 0),
            "x,y,z\n0,0,0.31\n"u8.ToArray()),
        Of(new MistakeFound("ends-swapped", "ends-swapped:W7", "Swapped back at X1.")),
    ];

    /// <summary>Records it.</summary>
    public static async Task WriteAsync(IJournal journal)
    {
        ArgumentNullException.ThrowIfNull(journal);
        foreach (var build in Builds)
            await journal.StartBuildAsync(build);
        foreach (var entry in Entries)
            await journal.AppendAsync(Builds[0].Id, entry);
    }

    private static EntryDraft Of(EntryContent content) => new(Key(content.ToString()), "Ada Example", "bench meter", content);

    private static Guid Key(string name) => new(Encoding.UTF8.GetBytes(Fingerprint.OfText(string.Create(CultureInfo.InvariantCulture, $"kept {name}")))[..16]);

    private static byte[] Bytes(int count)
    {
        var bytes = new byte[count];
        new Random(20310314).NextBytes(bytes);
        return bytes;
    }
}
