using System.Globalization;
using System.Text;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Publish.Schedules;
using UglyToad.PdfPig;
using UnitsNet;

namespace Proveout.Workshop.Tests.Scheduling;

public sealed class ScheduleTests
{
    private static readonly MachineDesign Design = Samples.Load("alderbrook").Design;

    private static readonly IReadOnlyList<Schedule> All = Of(Design, Length.FromMeters(10));

    private static readonly ScheduleBook Book = new("Alderbrook", "A printer.", "abc", ["Pull the plug."], All, WireLabel.AllOf(Design, ""));

    [Fact]
    public void The_wire_list_has_a_line_for_each_conductor_with_both_its_ends()
    {
        var rows = Find("wire-list").Rows;
        Assert.Equal(Design.Conductors.Select(conductor => conductor.Id), rows.Select(row => row[0]));
        foreach (var (conductor, row) in Design.Conductors.Zip(rows))
            Assert.True(
                row[1].StartsWith($"{conductor.From} (", StringComparison.Ordinal) && row[2].StartsWith($"{conductor.To} (", StringComparison.Ordinal)
                && row[4] == ColourWords.Of(conductor.Colour));
    }

    [Fact]
    public void The_cut_list_cuts_each_conductor_once_and_no_reel_gives_more_than_it_holds()
    {
        var rows = Find("cut-list").Rows;
        Assert.Equal(Design.Conductors.Select(conductor => conductor.Id).Order(StringComparer.Ordinal), rows.Select(row => row[1]).Order(StringComparer.Ordinal));
        foreach (var reel in rows.GroupBy(row => row[0]))
            Assert.True(reel.Sum(row => Millimetres(row[2])) <= 10_000, reel.Key);
    }

    // First fit decreasing: at most 11/9 of the fewest and 6/9 more. G. Dósa, The tight bound of first fit decreasing bin-packing algorithm, 2007.
    [Theory]
    [InlineData(1.0)]
    [InlineData(2.2)]
    [InlineData(10)]
    public void The_cut_list_takes_few_reels(double metres)
    {
        var rows = Of(Design with { Conductors = Design.Conductors.Where(conductor => conductor.Length.Meters <= metres).ToValueList() }, Length.FromMeters(metres))
            .Single(schedule => schedule.Id == "cut-list").Rows;
        foreach (var wire in rows.GroupBy(row => row[0].Split(", reel")[0]))
            Assert.True(
                wire.Select(row => row[0]).Distinct().Count() <= (11 / 9.0 * Math.Ceiling(wire.Sum(row => Millimetres(row[2])) / (metres * 1000)) * 1.5) + (6 / 9.0),
                wire.Key);
    }

    [Fact]
    public void A_wire_longer_than_a_reel_is_said_to_be()
    {
        var longest = Design.Conductors.MaxBy(conductor => conductor.Length.Millimeters)!;
        var row = Of(Design, Length.FromMeters(1)).Single(schedule => schedule.Id == "cut-list").Rows.Single(row => row[1] == longest.Id);
        Assert.Equal("longer than a reel", row[3]);
    }

    [Fact]
    public void What_the_machine_file_says_of_an_end_goes_before_what_its_connector_asks_for()
    {
        var lugged = Design with
        {
            Conductors = Design.Conductors.Select(conductor => conductor.Id == "W101" ? conductor with { Make = conductor.Make with { FromEnd = EndKind.Lug } } : conductor).ToValueList(),
        };
        var row = Of(lugged, Length.FromMeters(10)).Single(schedule => schedule.Id == "wire-list").Rows.Single(row => row[0] == "W101");
        Assert.EndsWith("lug, 1 mm², as the machine file says", row[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Terminations_are_two_for_each_conductor() =>
        Assert.Equal(2 * Design.Conductors.Count, Find("terminations").Rows.Sum(row => int.Parse(row[1], CultureInfo.InvariantCulture)));

    [Fact]
    public void Every_jumper_of_every_part_is_on_the_map_with_its_position()
    {
        var rows = Find("jumper-map").Rows;
        Assert.Equal(Design.Parts.Sum(part => part.Type.Jumpers.Count), rows.Count);
        Assert.Contains(rows, row => row[0].StartsWith("A1 ", StringComparison.Ordinal) && row[1] == "FAN-BANK-2" && row[2] == "12 V");
    }

    [Fact]
    public void Every_part_has_boxes_to_tick_and_what_to_look_for()
    {
        var rows = Find("part-list").Rows;
        Assert.Equal(Design.Parts.Count, rows.Count);
        Assert.Contains(rows, row => row[0] == "E1" && row[3].Contains("element 98.4 Ω to 113 Ω", StringComparison.Ordinal));
        Assert.All(rows, row => Assert.Equal(["☐", "☐", "☐"], row.Skip(4)));
    }

    [Fact]
    public void The_order_of_work_fits_every_conductor_once_and_bonding_before_mains()
    {
        var rows = Find("order-of-work").Rows;
        var fitted = rows.Where(row => row[2].StartsWith("Fit ", StringComparison.Ordinal)).Select(row => row[2].Split(' ', ':')[1]).ToArray();
        Assert.Equal(Design.Conductors.Select(conductor => conductor.Id).Order(StringComparer.Ordinal), fitted.Order(StringComparer.Ordinal));
        Assert.True(Array.IndexOf(fitted, "W151") < Array.IndexOf(fitted, "W101"));
    }

    [Fact]
    public void Values_are_separated_as_RFC_4180_says_and_start_no_formula()
    {
        var text = CsvSchedule.Write(new("x", "X", "", [new("A"), new("B, \"b\"")], [["=1+1", "plain"], ["two\nlines", "☐"]]));
        Assert.Equal("A,\"B, \"\"b\"\"\"\r\n'=1+1,plain\r\ntwo lines,\r\n", text);
    }

    [Fact]
    public void Paper_and_page_hold_every_conductor_of_the_order_of_work()
    {
        using var file = new MemoryStream();
        PdfSchedules.Write(Book, DateTimeOffset.UnixEpoch, file);
        using var pdf = PdfDocument.Open(file.ToArray());
        var words = pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text.Trim(':')).ToHashSet();
        var page = HtmlSchedules.Write(Book);
        foreach (var conductor in Design.Conductors)
            Assert.True(words.Contains(conductor.Id) && page.Contains($">{conductor.Id}<", StringComparison.Ordinal), conductor.Id);
    }

    [Fact]
    public void Equal_schedules_give_equal_files()
    {
        Assert.Equal(Written(), Written());

        static byte[] Written()
        {
            using var file = new MemoryStream();
            PdfSchedules.Write(Book, DateTimeOffset.UnixEpoch, file);
            PdfLabels.Write(Book, DateTimeOffset.UnixEpoch, file);
            file.Write(Encoding.UTF8.GetBytes(HtmlLabels.Write(Book)));
            return file.ToArray();
        }
    }

    private static Schedule Find(string id) => All.Single(schedule => schedule.Id == id);

    private static double Millimetres(string cell) => double.Parse(cell.Split(' ')[0], CultureInfo.InvariantCulture);

    private static IReadOnlyList<Schedule> Of(MachineDesign design, Length reel)
    {
        var steps = WorkOrder.Of(new WiringContext(WiringNetworkBuilder.Build(design)));
        return ScheduleMakers.Of(new(design, reel, steps, [.. steps.Select(_ => Array.Empty<Engine.Faults.Check>())]));
    }
}
