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
}
