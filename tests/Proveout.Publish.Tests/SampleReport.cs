using System.Security.Cryptography;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Publish.Report;

namespace Proveout.Publish.Tests;

/// <summary>Records of a machine of our own invention.</summary>
internal static class SampleReport
{
    public const string LastHash = "9f2c61d7a04be8355d10c4f7be6a2398ed0157bc42f8a6310d9b7e5c8842af16";

    /// <summary>A picture of 2 by 2 points, PNG.</summary>
    public static readonly byte[] Picture = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAIAAAD91JpzAAAAFUlEQVR4nGM4pqHx4e1TBiCWzXYFADXYB2iz3+H5AAAAAElFTkSuQmCC");

    /// <summary>A small grey picture, JPEG.</summary>
    public static readonly byte[] GreyPicture = Convert.FromBase64String(
        "/9j/4AAQSkZJRgABAQEAAgACAAD/2wBDAAgGBgcGBQgHBwcJCQgKDBQNDAsLDBkSEw8UHRofHh0aHBwgJC4nICIsIxwcKDcpLDAxNDQ0Hyc5PT" +
        "gyPC4zNDL/2wBDAQkJCQwLDBgNDRgyIRwhMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjIyMjL/wAARCAAY" +
        "ABEDASIAAhEBAxEB/8QAHwAAAQUBAQEBAQEAAAAAAAAAAAECAwQFBgcICQoL/8QAtRAAAgEDAwIEAwUFBAQAAAF9AQIDAAQRBRIhMUEGE1FhBy" +
        "JxFDKBkaEII0KxwRVS0fAkM2JyggkKFhcYGRolJicoKSo0NTY3ODk6Q0RFRkdISUpTVFVWV1hZWmNkZWZnaGlqc3R1dnd4eXqDhIWGh4iJipKT" +
        "lJWWl5iZmqKjpKWmp6ipqrKztLW2t7i5usLDxMXGx8jJytLT1NXW19jZ2uHi4+Tl5ufo6erx8vP09fb3+Pn6/8QAHwEAAwEBAQEBAQEBAQAAAA" +
        "AAAAECAwQFBgcICQoL/8QAtREAAgECBAQDBAcFBAQAAQJ3AAECAxEEBSExBhJBUQdhcRMiMoEIFEKRobHBCSMzUvAVYnLRChYkNOEl8RcYGRom" +
        "JygpKjU2Nzg5OkNERUZHSElKU1RVVldYWVpjZGVmZ2hpanN0dXZ3eHl6goOEhYaHiImKkpOUlZaXmJmaoqOkpaanqKmqsrO0tba3uLm6wsPExc" +
        "bHyMnK0tPU1dbX2Nna4uPk5ebn6Onq8vP09fb3+Pn6/9oADAMBAAIRAxEAPwD2yGdJXkaKYyL5rqSrkrlWKkcdwQQR2IxV1CjY5bP+8xrPd5Vu" +
        "Zum3ccDbSQ3V22osjOPIwm0BTnJLbsnoRjb09/agDXooooAqrb26OzGLc5YkuYhnk+wqVRFkYj5z/wA8/wD61FFAEtFFFAH/2Q==");

    private static readonly DateTimeOffset Start = new(2031, 3, 14, 9, 30, 0, TimeSpan.Zero);

    public static ReportModel Small { get; } = Make(
        "Small oven",
        [
            Row(1, "Everything unplugged, mains lead in the hand", "Protective conductor to the frame", "red on X1.PE, black on H1.frame", "0.0 Ω to 0.3 Ω", "0.1 Ω", ReportVerdict.Pass),
            Row(2, "Everything unplugged, mains lead in the hand", "Line to the frame", "red on X1.L, black on H1.frame", "over 20 MΩ", "1.2 MΩ", ReportVerdict.Fail),
            Row(3, "Plugs of the controller pulled", "Plate heater", "red on E1.A (plug), black on E1.B (plug)", "98 Ω ± 7 %", "", ReportVerdict.LeftOut, "The plug is glued."),
            Row(4, "Plugs of the controller pulled", "Temperature sensor", "red on B1.1, black on B1.2", "90 kΩ to 118 kΩ", "104 kΩ", ReportVerdict.CannotTell),
            Row(5, "Plugs of the controller pulled", "Fan", "", "turns freely by hand", "", ReportVerdict.NotDone),
        ]);

    public static ReportModel Make(string machine, ValueList<ReportRow> rows) => new(
        machine,
        "A box that keeps 60 °C; wires of 0.75 mm², capacitor of 100 µF.",
        "7a1f0c55e6b2d3948810ffab12cd34ee",
        "SO-0001",
        "A. Builder",
        Start,
        Start.AddHours(5),
        ["Hand-held meter, 20 MΩ", "Insulation tester, 500 V"],
        ["Pull the mains lead and keep the plug in sight: mains can kill.", "Wait until the capacitors are empty, and measure that they are."],
        rows,
        [
            new(Start.AddHours(1), "A. Builder", "W12", "Violet instead of blue: none was left.", null, ""),
            new(Start.AddHours(2), "A. Builder", "E1", "The glued plug.", Picture, Convert.ToHexStringLower(SHA256.HashData(Picture))),
        ],
        [new("Conductor missing", 42, 42), new("Ends swapped", 31, 28), new("Poor joint", 84, 12)],
        [new("A joint that is loose but still touches", "fire", "Pull each conductor with 20 N.", 72), new("Wrong colour of a conductor", "hidden", "Look.", 3)],
        [new("B. Checker", "checker", "I have seen every reading being taken.", Start.AddHours(4))],
        LastHash,
        57)
    {
        Pairs = new(
            "990 pairs of mistakes can be made together; the plan surely catches 981 of them.",
            [new("Two of one kind: two ends swapped. Together they leave the same circuit. Such as: W1 and W2 at both ends.", "fire", "Read both labels.", 2)],
            7),
    };

    /// <summary>Many checks with words of many lengths, the same on every run.</summary>
    public static ReportModel Large(int count) => Make(
        "Machine with a name that is a good deal longer than any line at the head of a page could ever hold, and then some more",
        Enumerable.Range(1, count).Select(LargeRow).ToValueList());

    private static ReportRow LargeRow(int number) => Row(
        number,
        $"Set-up {1 + (number / 40)}",
        Words("title", number, 1 + (number % 12)),
        $"red on A{number}.{new string('W', number % 40)}, black on K{number}.{number % 7}",
        Words("expect", number, 1 + (number % 5)),
        Words("read", number, 1 + (number % 3)),
        (ReportVerdict)(number % 5),
        number % 9 == 0 ? Words("note", number, number % 25) : "");

    private static ReportRow Row(
        int number, string setUp, string title, string points, string expectation, string reading, ReportVerdict verdict, string note = "") => new(
        number, setUp, title, points, expectation, reading, verdict, note,
        verdict == ReportVerdict.NotDone ? "" : "A. Builder",
        verdict == ReportVerdict.NotDone ? null : Start.AddMinutes(number));

    private static string Words(string stem, int number, int count) =>
        new StringBuilder().AppendJoin(' ', Enumerable.Range(1, count).Select(index => $"{stem}{number}-{index}")).ToString();
}
