using System.Globalization;
using System.Numerics;
using MathNet.Numerics.IntegralTransforms;
using Proveout.Engine.Motion;
using Proveout.Engine.Tests.Motion;

namespace Proveout.Benchmarks;

/// <summary>Prints how long a fundamental takes from 1.5 s of sound at 44.1 kHz, against one general-purpose Fourier transform of the same samples.</summary>
internal static class SoundSpeed
{
    private const int Turns = 40;

    public static void Print(TextWriter output)
    {
        foreach (var (name, pluck) in new (string, SyntheticPluck)[]
        {
            ("quiet, 110 Hz", new SyntheticPluck(110) { NoiseRatioDecibels = 30 }),
            ("noise 10 dB below, 40 Hz", new SyntheticPluck(40) { NoiseRatioDecibels = 10, DecaySeconds = 0.5 }),
            ("voice at a third, 150 Hz", new SyntheticPluck(150) { NoiseRatioDecibels = 30, VoiceShare = 0.3 }),
            ("three strokes, 90 Hz", new SyntheticPluck(90) { NoiseRatioDecibels = 20, Strokes = [0.1, 0.6, 1.1] }),
        })
            Print(output, name, pluck.Recording());
    }

    private static void Print(TextWriter output, string name, Recording recording)
    {
        var found = PitchFinder.Find(recording);
        var own = ProcessorTime.Of(Turns, () => found = PitchFinder.Find(recording)).Processor;
        var transform = ProcessorTime.Of(Turns, () => Fourier.Forward([.. recording.Samples.Select(sample => new Complex(sample, 0))], FourierOptions.NoScaling)).Processor;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: {1000 * own:0.0} ms of processor time, MathNet transform of {recording.Samples.Count} samples {1000 * transform:0.0} ms, ratio {own / transform:0.00}; {(found.Value is { } pitch ? $"{pitch.FundamentalHertz:0.00} Hz" : "not told")}"));
    }
}
