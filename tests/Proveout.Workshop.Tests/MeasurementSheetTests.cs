namespace Proveout.Workshop.Tests;

public sealed class MeasurementSheetTests
{
    private static FrameRequest Frame(NamedText? rail, params (string Field, string Text)[] typed) =>
        new(typed.ToDictionary(item => item.Field, item => item.Text), rail);

    private static LevelRequest Level(string map, string supports = "", string later = "", string repeats = "", params (string Field, string Text)[] typed) => new(
        Text("map.csv", map), Text("later.csv", later), supports, Text("repeats.csv", repeats), "", ClockwiseLowers: false, MayBend: false, typed.ToDictionary(item => item.Field, item => item.Text));

    private static NamedText? Text(string name, string text) => text.Length > 0 ? new NamedText(name, text) : null;

    [Fact]
    public void A_skewed_frame_is_told_with_the_push_and_the_reading_after()
    {
        var sheet = FrameSheet.Of(Frame(null, ("ab", "300"), ("bc", "300"), ("cd", "300"), ("da", "300"), ("ac", "425,9"), ("bd", "422,6"), ("tape-error", "0,1"))).Value!;

        Assert.False(sheet.IsFine);
        Assert.Contains("The frame is out of square", sheet.Findings[0], StringComparison.Ordinal);
        Assert.Contains("push side C-D towards the side of A and D by 2.3", sheet.Steps[0], StringComparison.Ordinal);
        Assert.Contains("A-C 424.2", sheet.Steps[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_coarse_tape_cannot_tell_and_says_so()
    {
        var sheet = FrameSheet.Of(Frame(null, ("ab", "300"), ("bc", "300"), ("cd", "300"), ("da", "300"), ("ac", "424.3"), ("bd", "424.2"), ("tape-error", "1"))).Value!;

        Assert.False(sheet.IsFine);
        Assert.StartsWith("Whether the frame is square cannot be told", sheet.Findings[0], StringComparison.Ordinal);
        Assert.Empty(sheet.Steps);
    }

    [Fact]
    public void Impossible_diagonals_and_nothing_at_all_are_said()
    {
        Assert.Equal("no-frame", FrameSheet.Of(Frame(null, ("ab", "300"), ("bc", "300"), ("cd", "300"), ("da", "300"), ("ac", "700"), ("bd", "424"))).Diagnostics[0].Rule);
        Assert.Equal("nothing-measured", FrameSheet.Of(Frame(null)).Diagnostics[0].Rule);
        Assert.Equal("sides-missing", FrameSheet.Of(Frame(null, ("ac", "424"))).Diagnostics[0].Rule);
    }

    [Fact]
    public void A_racked_gantry_is_loosened_at_the_end_that_stays_behind()
    {
        var sheet = FrameSheet.Of(Frame(null, ("stop-left", "0"), ("stop-right", "0.6"), ("span", "400"))).Value!;

        Assert.Contains("its right end stays behind", sheet.Findings[0], StringComparison.Ordinal);
        Assert.Contains("Loosen the beam at its right end", sheet.Steps[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_crowned_rail_is_told_from_its_dial_readings()
    {
        var sheet = FrameSheet.Of(Frame(new NamedText("rail.csv", "reading [um];position [mm]\n0;0\n80;100\n110;200\n80;300\n0;400\n"))).Value!;

        Assert.Contains("The rail is high between its ends.", sheet.Findings);
    }

    [Fact]
    public void A_tilted_plate_is_levelled_by_turns_of_its_screws()
    {
        var sheet = LevelSheet.Of(Level("y;x;height [um]\n0;0;0\n0;300;0\n300;0;300\n300;300;300\n150;150;150\n", "front left 0 0; front right 300 0; back 150 300", typed: ("pitch", "0.5"))).Value!;

        Assert.Contains(sheet.Steps, step => step.StartsWith("Turn back about 5 eighths of a turn anticlockwise", StringComparison.Ordinal) || step.StartsWith("Leave back", StringComparison.Ordinal));
        Assert.Contains(sheet.Steps, step => step.StartsWith("Leave front", StringComparison.Ordinal));
    }

    [Fact]
    public void A_grid_needs_its_spacing()
    {
        Assert.Contains(LevelSheet.Of(Level("0 0.1\n0.2 0.3\n")).Diagnostics, problem => problem.Rule == "missing-figure");
        Assert.NotNull(LevelSheet.Of(Level("0 0.1\n0.2 0.3\n", typed: [("spacing-x", "100"), ("spacing-y", "100")])).Value);
    }

    [Fact]
    public void Points_on_one_line_are_refused_with_where_to_probe()
    {
        Assert.Contains("lie on one line", LevelSheet.Of(Level("x,y,z\n0,0,0\n10,0,0\n20,0,0\n")).Diagnostics[0].Message, StringComparison.Ordinal);
    }

    // Three corners at zero and one raised; the probe is right to 0.01 mm, so that two readings may differ by 0.02 mm more or less than the plate does.
    [Theory]
    [InlineData("0.27", "The plate is level within the limit.")]
    [InlineData("0.29", "cannot be told")]
    public void A_plate_counts_as_level_only_when_the_probe_can_tell(string height, string verdict) =>
        Assert.Contains(LevelSheet.Of(Level($"x,y,z\n0,0,0\n300,0,0\n0,300,0\n300,300,{height}\n")).Value!.Findings, finding => finding.Contains(verdict, StringComparison.Ordinal));

    [Fact]
    public void Heat_and_scatter_are_judged()
    {
        const string Cold = "x,y,z\n0,0,0\n300,0,0\n0,300,0\n300,300,0\n150,150,0\n";
        var sheet = LevelSheet.Of(Level(Cold, later: Cold.Replace("150,150,0", "150,150,0.3", StringComparison.Ordinal), repeats: "0.001 0.002 0.001\n0.002 0.001 0.001")).Value!;

        Assert.Contains(sheet.Findings, finding => finding.StartsWith("The plate changes its shape", StringComparison.Ordinal));
        Assert.Contains("The probe repeats well.", sheet.Findings);
    }

    [Fact]
    public void A_map_is_drawn_as_probed_without_its_tilt_and_as_it_changes()
    {
        const string Cold = "x,y,z\n0,0,0\n300,0,0\n0,300,0\n300,300,0\n150,150,0.1\n";
        var sheet = LevelSheet.Of(Level(Cold, later: Cold.Replace("150,150,0.1", "150,150,0.3", StringComparison.Ordinal))).Value!;

        Assert.Equal(["plate-as-probed", "plate-without-tilt", "plate-change"], sheet.Drawings.Select(drawing => drawing.Name));
        Assert.Contains("Highest 80 µm at x 150, y 150 mm; lowest −20 µm at x 0, y 0 mm.", sheet.Drawings[0].Words, StringComparison.Ordinal);
        Assert.Equal([["0", "0: −20; 300: −20"], ["150", "150: 80"], ["300", "0: −20; 300: −20"]], sheet.Drawings[0].Table.Rows);
        Assert.Contains("A line every 10 µm", sheet.Drawings[0].Words, StringComparison.Ordinal);
        Assert.All(sheet.Drawings.SelectMany(drawing => drawing.Pictures), picture => Assert.InRange(picture.Svg.Length, 500, 40_000));
    }

    [Fact]
    public void A_file_that_is_something_else_is_not_refused_word_by_word() =>
        Assert.InRange(FrameSheet.Of(new(new Dictionary<string, string>(), null) { Points = new("points", string.Concat(Enumerable.Repeat("x\n", 100_000))), Distances = new("distances", string.Concat(Enumerable.Repeat("x\n", 100_000))) }).Diagnostics.Count, 1, 60);

    [Theory]
    [InlineData("0 2 1e308\n1 5 8\n3 2 9\n", "")]
    [InlineData("0 2 1\n1 5 8\n3 2 9\n", "a 0 0; b 9 0; c nan 9")]
    public void Places_and_heights_that_no_plate_has_are_refused(string grid, string supports) =>
        Assert.Contains(LevelSheet.Of(Level(grid, supports, typed: [("spacing-x", "3"), ("spacing-y", "3"), ("pitch", "0.5")])).Diagnostics, problem => problem.Rule is "out-of-range" or "unclear-support");

    [Fact]
    public void No_line_is_closer_to_the_next_than_the_probe_can_tell()
    {
        var sheet = LevelSheet.Of(Level("x,y,z\n0,0,0\n300,0,0.03\n0,300,0\n300,300,0\n", typed: ("probe-error", "0.05"))).Value!;

        Assert.Contains("heights differ by less than the probe's error", sheet.Drawings[1].Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.07", "keeps its shape")]
    [InlineData("0.09", "cannot be told")]
    [InlineData("0.13", "changes its shape")]
    public void The_change_with_heat_is_judged_with_the_error_of_the_probe(string height, string verdict)
    {
        const string Cold = "x,y,z\n0,0,0\n300,0,0\n0,300,0\n300,300,0\n150,150,0\n";
        var sheet = LevelSheet.Of(Level(Cold, later: Cold.Replace("150,150,0", $"150,150,{height}", StringComparison.Ordinal))).Value!;

        Assert.Contains(sheet.Findings, finding => finding.Contains(verdict, StringComparison.Ordinal));
    }

    [Fact]
    public void Two_lifts_are_told_what_they_can_mend_and_what_stays()
    {
        var sheet = LevelSheet.Of(Level("x,y,z\n0,0,0\n300,0,0.3\n0,300,0.6\n300,300,0.9\n", "left 0 150; right 300 150")).Value!;

        Assert.Contains(sheet.Findings, finding => finding.Contains("The tilt across it stays and breaks the limit", StringComparison.Ordinal));
        Assert.Contains(sheet.Figures, figure => figure.Name == "Tilt across the two supports, which stays");
        Assert.False(sheet.IsFine);
    }

    // Two readings tell a standard deviation only to a factor of ten either way.
    [Theory]
    [InlineData("0.000 0.010", "cannot be told from so few readings")]
    [InlineData("0.000 0.040 0.080 0.000 0.080 0.040 0.080 0.000 0.040 0.080 0.000", "scatters more than 0.01 mm")]
    public void The_scatter_of_a_probe_is_judged_with_what_so_many_readings_can_tell(string repeats, string verdict) =>
        Assert.Contains(LevelSheet.Of(Level("", repeats: repeats)).Value!.Findings, finding => finding.Contains(verdict, StringComparison.Ordinal));

    private static NamedText Corners => new("points", "A 0 0 0\nB 400 0 0\nC 400 300 0\nD 0 300 0; E 200 150 300\n");

    [Fact]
    public void A_corner_in_space_is_named_with_the_way_back()
    {
        // Corner E 3 mm too high; each distance by the law of Pythagoras.
        var slant = Math.Sqrt((200 * 200) + (150 * 150) + (303 * 303));
        var tape = FormattableString.Invariant($"A-B 400; B-C 300; C-D 400\nD-A 300\nA-C 500\nB D 500\nA-E {slant:0.###}\nB-E {slant:0.###}\nC-E {slant:0.###}\nD-E {slant:0.###}");
        var sheet = FrameSheet.Of(new FrameRequest(new Dictionary<string, string> { ["tape-error"] = "0.1" }, null) { Points = Corners, Distances = new("distances", tape) }).Value!;

        Assert.StartsWith("Corner E is out of place: the others put it 3.0", sheet.Findings[0], StringComparison.Ordinal);
        Assert.Contains("Loosen the joints at E, move it 3.0", sheet.Steps[0], StringComparison.Ordinal);
        Assert.Contains(" down,", sheet.Steps[0] + ",", StringComparison.Ordinal);
    }

    [Fact]
    public void Corners_in_space_that_cannot_be_read_are_refused_with_their_line()
    {
        var refused = FrameSheet.Of(new FrameRequest(new Dictionary<string, string>(), null) { Points = new("points", "A 0 0 0\nB 400 0"), Distances = new("distances", "A 400") }).Diagnostics;

        Assert.Equal(["points:2:1", "distances:1:1"], refused.Select(diagnostic => diagnostic.ToString().Split(": ")[0]));
        Assert.Equal("half-given", FrameSheet.Of(new FrameRequest(new Dictionary<string, string>(), null) { Points = Corners }).Diagnostics[0].Rule);
    }
}
