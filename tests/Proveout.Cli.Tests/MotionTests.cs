namespace Proveout.Cli.Tests;

public sealed class MotionTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task A_note_with_length_and_mass_is_told_as_a_force()
    {
        // 9.1476 N (shared reference values, 5.1).
        var run = await Run.OfAsync("tension", "--frequency", "110", "--frequency-error", "0.1", "--span", "150", "--span-error", "0.1", "--mass", "8.4", "--mass-error", "0.05");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains("9.148 ± 0.068 N", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unequal_pair_ends_with_findings()
    {
        var run = await Run.OfAsync("tension", "--frequency", "112", "--other-frequency", "96");

        Assert.Equal(1, run.Exit);
        Assert.Contains("The left belt is tighter.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_missing_or_no_recording_is_refused_with_its_name()
    {
        var text = folder.At("notes.wav");
        await File.WriteAllTextAsync(text, "this is no sound");

        var missing = await Run.OfAsync("tension", folder.At("nowhere.wav"));
        var wrong = await Run.OfAsync("tension", text);

        Assert.Equal((2, 2), (missing.Exit, wrong.Exit));
        Assert.Contains("nowhere.wav: The file cannot be read.", missing.Error, StringComparison.Ordinal);
        Assert.Contains("notes.wav: This is no WAV file", wrong.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_motor_with_too_little_torque_ends_with_findings()
    {
        string[] words = ["motor", "--teeth", "20", "--current", "1.68", "--resistance", "1.65", "--inductance", "2.8", "--holding-torque", "0.44", "--mass", "2", "--acceleration", "40", "--speed", "700"];
        var run = await Run.OfAsync(words);

        Assert.Equal(1, run.Exit);
        Assert.Contains("steps will be lost", run.Output, StringComparison.Ordinal);
        Assert.Contains("1.17 A where the driver asks for r.m.s., 1.66 A where it asks for peak", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plate_is_drawn_to_files_beside_each_other()
    {
        var map = folder.Write("map.csv", "x;y;z\n0;0;0\n300;0;0,1\n0;300;0,05\n300;300;0,2\n150;150;0,1\n");

        var run = await Run.OfAsync("level", map, "--drawing", folder.At("plate.svg"), "--json");

        Assert.Equal("", run.Error);
        Assert.Contains("\"files\"", run.Output, StringComparison.Ordinal);
        Assert.Contains("Heights as probed", await File.ReadAllTextAsync(folder.At("plate.svg")), StringComparison.Ordinal);
        Assert.Contains("Shape without the tilt", await File.ReadAllTextAsync(folder.At("plate-plate-without-tilt.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_no_map_was_given_there_is_nothing_to_draw()
    {
        var run = await Run.OfAsync("level", "--repeats", folder.Write("probe.csv", "0.001 0.002 0.001"), "--drawing", folder.At("nothing.svg"));

        Assert.Equal(2, run.Exit);
        Assert.Contains("There is nothing to draw.", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.At("nothing.svg")));
    }

    [Fact]
    public async Task What_is_seen_of_belts_is_told_in_words_and_answered_with_suspects_and_the_next_check()
    {
        var run = await Run.OfAsync("belts", "alderbrook", "--sees", "X aslant");

        Assert.Equal((1, ""), (run.Exit, run.Complaints));
        Assert.Contains("You say: x goes aslant.", run.Output, StringComparison.Ordinal);
        Assert.True(run.Output.IndexOf("CAUTION:", StringComparison.Ordinal) is > 0 and var caution && caution < run.Output.IndexOf("Worth most now", StringComparison.Ordinal));
        Assert.Contains("--reads", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_understood_is_answered_with_the_words_that_can()
    {
        var unknown = await Run.OfAsync("frame", "--sees", "it smells");
        var unclear = await Run.OfAsync("frame", "--sees", "squares come out");
        var reading = await Run.OfAsync("frame", "--reads", "stops");

        Assert.Equal((2, 2, 2), (unknown.Exit, unclear.Exit, reading.Exit));
        Assert.Contains("squares come out as rhombs", unknown.Error, StringComparison.Ordinal);
        Assert.Contains("can mean `squares come out square` or `squares come out as rhombs`", unclear.Error, StringComparison.Ordinal);
        Assert.Contains("`diagonals=1.5`", reading.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_frame_is_diagnosed_from_what_is_seen_and_read()
    {
        var run = await Run.OfAsync("frame", "--sees", "the gantry touches one stop first", "--reads", "beam-square=0", "--reads", "diagonals=0", "--json");

        Assert.Equal(1, run.Exit);
        Assert.Contains("stop is misplaced", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_budget_that_breaks_its_limit_ends_with_findings()
    {
        var run = await Run.OfAsync("budget", "--travel-x", "300", "--travel-y", "300", "--square", "0.4", "--limit", "0.2");

        Assert.Equal(1, run.Exit);
        Assert.Contains("Y does not keep the limit. Most of Y comes from: beam not square to the rails.", run.Output, StringComparison.Ordinal);
        Assert.Contains("± 0.3 mm", run.Output, StringComparison.Ordinal);
    }
}
