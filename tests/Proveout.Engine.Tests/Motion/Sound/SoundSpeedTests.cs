using System.Diagnostics;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

[Collection(nameof(AloneCollection))]
public sealed class SoundSpeedTests
{
    [Fact]
    public void A_fundamental_from_one_and_a_half_seconds_at_44100_takes_less_than_50_ms_of_processor_time()
    {
        var recording = new SyntheticPluck(110) { NoiseRatioDecibels = 20 }.Recording();
        PitchFinder.Find(recording);
        using var process = Process.GetCurrentProcess();
        var best = double.MaxValue;
        // The computer may be busy with something else: the best of some batches counts.
        for (var batch = 0; batch < 8 && best >= 50; batch++)
        {
            process.Refresh();
            var before = process.TotalProcessorTime;
            for (var turn = 0; turn < 10; turn++)
                PitchFinder.Find(recording);
            process.Refresh();
            best = Math.Min(best, (process.TotalProcessorTime - before).TotalMilliseconds / 10);
        }

        Assert.InRange(best, 0, 50);
    }
}
