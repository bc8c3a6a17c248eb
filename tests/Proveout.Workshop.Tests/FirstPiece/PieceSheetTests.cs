using System.Globalization;

namespace Proveout.Workshop.Tests;

public sealed class PieceSheetTests
{
    private static readonly Dictionary<string, string> Size = new() { ["ring"] = "100" };

    private static PieceRequest Request(NamedText? readings, params (string Field, string Text)[] typed) =>
        new(typed.Append(("ring", "100")).ToDictionary(item => item.Item1, item => item.Item2), readings);

    // Readings of a piece whose lengths along X and Y, first and second diagonal are off by these shares, and whose walls grew.
    private static NamedText Readings(double x, double y, double first, double second, double growth, double scatter = 0.01)
    {
        var random = new Random(3);
        double[] shares = [x, y, first, second];
        return new("readings.csv", "measure;reading [mm]\n" + string.Join('\n', PieceFiles.Of(Size).Value!.Measures.Where(measure => measure.Number <= 16).Select(measure => string.Create(
            CultureInfo.InvariantCulture,
            $"{measure.Number};{(measure.DrawnMm * (1 + shares[(measure.Number - 1) % 4])) + (measure.IsInside ? -growth : growth) + (scatter * ((2 * random.NextDouble()) - 1)):0.000}"))));
    }

    [Fact]
    public void A_long_axis_a_skew_and_grown_walls_are_told_apart_with_what_to_set()
    {
        var answer = PieceSheet.Of(Request(Readings(0.005, 0, 0.0025 + 0.002, 0.0025 - 0.002, 0.2), ("steps-x", "80"))).Value!;

        Assert.False(answer.Sheet.IsFine);
        Assert.Contains(answer.Sheet.Findings, finding => finding.StartsWith("X is 0.5", StringComparison.Ordinal) && finding.EndsWith("real, and surely beyond the limit.", StringComparison.Ordinal));
        Assert.Contains(answer.Sheet.Findings, finding => finding.StartsWith("Y is 0.0", StringComparison.Ordinal) && finding.Contains("noise of measuring", StringComparison.Ordinal));
        Assert.Contains(answer.Sheet.Steps, step => step.StartsWith("Set the steps for each mm of X from 80.0000 to 79.6", StringComparison.Ordinal));
        // Diagonals differ by 0.4 %: Y leans towards +X by 0.4 mm in 100 mm, less what the readings scatter.
        Assert.Contains(answer.Sheet.Findings, finding => finding.StartsWith("Y leans towards +X by 0.396", StringComparison.Ordinal));
        Assert.Contains(answer.Sheet.Steps, step => step.Contains("shift X by -0.00396", StringComparison.Ordinal));
        Assert.Contains(answer.Sheet.Findings, finding => finding.StartsWith("Outside lengths are 0.2", StringComparison.Ordinal));
        Assert.Equal(100, answer.Lengths[0].After.Value, 1);
        Assert.NotNull(answer.Plot);
    }

    [Fact]
    public void A_piece_as_drawn_is_left_alone()
    {
        var sheet = PieceSheet.Of(Request(Readings(0, 0, 0, 0, 0))).Value!.Sheet;

        Assert.True(sheet.IsFine, string.Join('\n', sheet.Findings));
        Assert.Empty(sheet.Steps);
        Assert.All(sheet.Findings, finding => Assert.EndsWith("Leave it.", finding, StringComparison.Ordinal));
    }

    [Fact]
    public void A_coarse_calliper_cannot_tell_and_says_what_would()
    {
        var sheet = PieceSheet.Of(Request(Readings(0.001, 0, 0.0005, 0.0005, 0), ("calliper-error", "0.5"))).Value!.Sheet;

        Assert.Contains(sheet.Findings, finding => finding.StartsWith("X is 0.1", StringComparison.Ordinal) && finding.Contains("Do not correct it yet. No number of readings would decide it: the doubt of", StringComparison.Ordinal));
        Assert.Empty(sheet.Steps);
    }

    [Fact]
    public void Scattered_readings_ask_for_the_piece_to_be_made_again_so_many_times()
    {
        var sheet = PieceSheet.Of(Request(Readings(0.0016, 0, 0.0008, 0.0008, 0, scatter: 0.12), ("calliper-error", "0.001"))).Value!.Sheet;

        Assert.Contains(sheet.Findings, finding => finding.Contains("times over, each time a fresh one, would decide it.", StringComparison.Ordinal));
    }

    [Fact]
    public void Shrinkage_that_is_known_is_taken_off_and_shrinkage_that_is_not_is_asked_about()
    {
        var unknown = PieceSheet.Of(Request(Readings(-0.005, -0.005, -0.005, -0.005, 0))).Value!.Sheet;
        var known = PieceSheet.Of(Request(Readings(-0.005, -0.005, -0.005, -0.005, 0), ("shrinkage", "0.5"), ("shrinkage-error", "0.05"))).Value!.Sheet;

        Assert.Contains(unknown.Steps, step => step.StartsWith("X and Y are short alike, as by shrinkage", StringComparison.Ordinal));
        Assert.True(known.IsFine, string.Join('\n', known.Findings));
        Assert.Contains(known.Figures, figure => figure.Name == "Length along X, shrinkage taken off");
    }

    [Fact]
    public void Exchanged_readings_are_named_and_nothing_is_corrected_by_them()
    {
        var sound = Readings(0.006, 0, 0.003, 0.003, 0.1);
        var lines = sound.Text.Split('\n');
        (lines[1], lines[2]) = ($"1;{lines[2].Split(';')[1]}", $"2;{lines[1].Split(';')[1]}");

        var sheet = PieceSheet.Of(Request(sound with { Text = string.Join('\n', lines) })).Value!.Sheet;

        Assert.StartsWith("Measures 1 and 2 seem to stand in each other's place", sheet.Findings[0], StringComparison.Ordinal);
        Assert.Empty(sheet.Steps);
        Assert.False(sheet.IsFine);
    }

    [Fact]
    public void The_doubt_is_shown_cause_by_cause_and_adds_up()
    {
        var answer = PieceSheet.Of(Request(Readings(0, 0, 0, 0, 0))).Value!;
        var walls = answer.Doubts.Single(doubt => doubt.Name.StartsWith("Growth of walls", StringComparison.Ordinal));

        Assert.Contains(walls.Causes, cause => cause.Cause == "inside jaws of the calliper");
        var expanded = answer.Sheet.Figures.Single(figure => figure.Name == walls.Name).Figure.Expanded;
        Assert.InRange(expanded / Math.Sqrt(walls.Causes.Sum(cause => cause.Standard * cause.Standard)), 1.95, 2.5);
    }

    [Fact]
    public void A_ratio_of_a_wrong_pulley_is_not_stretched_away() =>
        Assert.Contains(PieceSheet.Of(Request(Readings(0.25, 0, 0.11803, 0.11803, 0))).Value!.Sheet.Steps, step => step.StartsWith("X is off by a ratio", StringComparison.Ordinal));

    [Fact]
    public void Readings_may_be_typed_several_to_a_measure_with_decimal_commas()
    {
        var answer = PieceSheet.Of(Request(null, ("measure-1", "100,02 100,04"), ("measure-5", "80.01; 80.02"), ("measure-9", "50,01, 50,03"), ("measure-13", "30,00"))).Value!;

        Assert.Equal(100.03, answer.Lengths[0].ReadMm, 6);
        Assert.Equal(50.02, answer.Lengths[2].ReadMm, 6);
    }

    [Fact]
    public void The_filled_form_is_read_back()
    {
        var form = PieceFiles.Of(Size).Value!.Form.Replace("100;\n", "100; 100.1\n", StringComparison.Ordinal).Replace("80;\n", "80; 79.95\n", StringComparison.Ordinal).Replace("50;\n", "50; 50.06\n", StringComparison.Ordinal);

        Assert.Equal(12, PieceSheet.Of(Request(new NamedText("first-piece.csv", form))).Value!.Lengths.Count);
    }

    [Theory]
    [InlineData("measure;reading\n1;3.937\n5;80\n9;50\n", "a length in inches")]
    [InlineData("measure;reading [in]\n1;3.937\n", "do not tell scale, growth of walls and skew apart")]
    [InlineData("measure;reading\n99;100\n", "The piece has no measure 99.")]
    [InlineData("measure;drawn;reading\n1;120;120.1\n", "drawn as 120 mm here, and as 100 mm in the piece that is judged")]
    [InlineData("measure;reading\n1;100,1.2\n", "is not a number")]
    [InlineData("number of it;reading\n1;100\n", "There is no column `measure`")]
    public void A_table_that_cannot_be_is_refused_in_a_sentence(string table, string words) =>
        Assert.Contains(PieceSheet.Of(Request(new NamedText("readings.csv", table))).Diagnostics, problem => problem.Message.Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData("mark-after", "120 120", "mark-before", "20 20", "away from the feeder")]
    [InlineData("mark-before", "120 120", "mark-after", "20", "2 readings before and 1 after")]
    [InlineData("mark-before", "4.72", "mark-after", "0.8", "cannot take 3.92 mm")]
    [InlineData("wall", "0.45 0.46", "flow", "100", "2 places are too few")]
    [InlineData("wall", "0.018 0.018 0.018", "flow", "100", "cannot be")]
    [InlineData("wall", "0.45 thick 0.46", "flow", "100", "`thick` is no figure in mm")]
    [InlineData("block-one", "25 25", "block", "25", "not the closed jaws")]
    [InlineData("made", "carved", "wall", "", "`carved` is no way of making it")]
    [InlineData("ring", "", "travel-y", "80", "The smallest piece needs")]
    public void What_cannot_be_is_refused_in_a_sentence(string field, string text, string other, string more, string words)
    {
        Dictionary<string, string> typed = new() { ["ring"] = "100", [field] = text, [other] = more };

        Assert.Contains(PieceSheet.Of(new PieceRequest(typed, null)).Diagnostics, problem => problem.Message.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_measured_is_said() => Assert.Equal("nothing-measured", PieceSheet.Of(Request(null)).Diagnostics.Single().Rule);

    [Fact]
    public void Feed_wall_and_calliper_are_judged_together()
    {
        var sheet = PieceSheet.Of(Request(
            null, ("mark-before", "120 120 120"), ("mark-after", "25 25.5 25"), ("feed-steps", "400"),
            ("wall", "0.53 0.54 0.53 0.53 0.54 0.53"), ("closed", "0.02 0.02 0.02 0.02 0.02"), ("lean", "50"))).Value!.Sheet;

        Assert.Contains(sheet.Findings, finding => finding.StartsWith("The feeder takes 5.17", StringComparison.Ordinal));
        Assert.Contains(sheet.Steps, step => step.StartsWith("Steps for each mm of feed: set 42", StringComparison.Ordinal));
        // 0.5333 less the zero of 0.02 is 0.5133.
        Assert.Contains(sheet.Figures, figure => figure.Name == "Single wall: thickness" && Math.Abs(figure.Figure.Value - 0.5133) < 1e-4);
        Assert.Contains(sheet.Findings, finding => finding.StartsWith("Overhangs need support somewhere between 50 and 60", StringComparison.Ordinal));
        Assert.Contains(sheet.Findings, finding => finding.StartsWith("The calliper does not show zero", StringComparison.Ordinal));
    }
}
