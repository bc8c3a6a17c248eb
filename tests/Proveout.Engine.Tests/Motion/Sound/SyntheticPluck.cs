using System.Numerics;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Plucks whose fundamental is known: damped partials of a stiff string, white noise, a hum, a voice. Seeded.</summary>
internal sealed record SyntheticPluck(double FundamentalHertz)
{
    public double Inharmonicity { get; init; }

    public double DecaySeconds { get; init; } = 0.25;

    public double Seconds { get; init; } = 1.5;

    public double Rate { get; init; } = 44_100;

    /// <summary>When it is struck; several times when there are several.</summary>
    public IReadOnlyList<double> Strokes { get; init; } = [0.3];

    public int PartialCount { get; init; } = 10;

    /// <summary>Share of the first partial that reaches the microphone.</summary>
    public double FundamentalShare { get; init; } = 1;

    /// <summary>Where it is plucked, as a share of the span.</summary>
    public double PluckPlace { get; init; } = 0.3;

    /// <summary>Power of the pluck's loudest tenth of a second over white noise; null without noise.</summary>
    public double? NoiseRatioDecibels { get; init; }

    public double HumShare { get; init; }

    public double VoiceShare { get; init; }

    public int Seed { get; init; }

    public double[] Samples()
    {
        var random = new Random(Seed);
        var samples = new double[(int)(Seconds * Rate)];
        foreach (var stroke in Strokes)
            Strike(samples, stroke, random);
        var level = Level(samples);
        if (NoiseRatioDecibels is { } decibels)
            for (var index = 0; index < samples.Length; index++)
                samples[index] += level * Math.Pow(10, -decibels / 20) * Gauss(random);
        if (HumShare > 0)
            for (var index = 0; index < samples.Length; index++)
                samples[index] += HumShare * level * (Math.Sin(2 * Math.PI * 100 * index / Rate) + (0.5 * Math.Sin(2 * Math.PI * 50 * index / Rate)));
        if (VoiceShare > 0)
            Speak(samples, VoiceShare * level, random);
        var peak = samples.Max(Math.Abs);
        return [.. samples.Select(sample => 0.5 * sample / peak)];
    }

    public Recording Recording() => new("made.wav", Samples(), Rate, new SampleForm(64, true, 1), []);

    // A string plucked at a share p of its length: amplitude sin(n pi p) / n², which radiates as sin(n pi p) / n; higher partials die sooner.
    private void Strike(double[] samples, double stroke, Random random)
    {
        for (var number = 1; number <= PartialCount; number++)
        {
            var hertz = FundamentalHertz * number * Math.Sqrt((1 + (Inharmonicity * number * number)) / (1 + Inharmonicity));
            if (hertz > 0.45 * Rate)
                break;
            var amplitude = Math.Sin(number * Math.PI * PluckPlace) / number * (number == 1 ? FundamentalShare : 1);
            var decay = DecaySeconds / (1 + (0.15 * (number - 1)));
            var phase = 2 * Math.PI * random.NextDouble();
            var start = (int)(stroke * Rate);
            // One turn of a damped phasor for each sample.
            var turn = Complex.Exp(new Complex(-1 / (decay * Rate), 2 * Math.PI * hertz / Rate));
            var phasor = amplitude * Complex.Exp(new Complex(0, phase));
            for (var index = start; index < samples.Length; index++, phasor *= turn)
                samples[index] += Math.Min(1, (index - start) / (0.004 * Rate)) * phasor.Imaginary;
        }

        // The finger's own knock.
        for (var index = 0; index < 0.006 * Rate && (int)(stroke * Rate) + index < samples.Length; index++)
            samples[(int)(stroke * Rate) + index] += 0.5 * Gauss(random);
    }

    // Syllables of a gliding pitch between 90 and 240 Hz with two formants.
    private void Speak(double[] samples, double level, Random random)
    {
        var at = 0;
        while (at < samples.Length)
        {
            var length = (int)((0.12 + (0.2 * random.NextDouble())) * Rate);
            var (from, glide) = (90 + (150 * random.NextDouble()), 0.15 * (random.NextDouble() < 0.5 ? -1 : 1) * (0.4 + random.NextDouble()));
            var (low, high) = (300 + (500 * random.NextDouble()), 900 + (1300 * random.NextDouble()));
            // Gain of each harmonic at the middle of the syllable's glide; its phase is a multiple of the glottis' own.
            var middle = from * (1 + (glide / 2));
            double[] gains = [.. Enumerable.Range(1, (int)(3000 / middle)).Select(number => Formant(number * middle, low, 120) + (0.5 * Formant(number * middle, high, 200)) + 0.15)];
            var phase = 0.0;
            for (var index = 0; index < length && at + index < samples.Length; index++)
            {
                var place = (double)index / length;
                phase += 2 * Math.PI * from * (1 + (glide * place)) / Rate;
                for (var number = 1; number <= gains.Length; number++)
                    samples[at + index] += level * gains[number - 1] * Math.Sin(Math.PI * place) * Math.Sin(number * phase) / Math.Sqrt(number);
            }

            at += length + (int)(0.15 * random.NextDouble() * Rate);
        }
    }

    private static double Formant(double hertz, double middle, double width) => Math.Exp(-Math.Pow((hertz - middle) / width, 2));

    // Loudest tenth of a second.
    private double Level(double[] samples)
    {
        var block = (int)(0.1 * Rate);
        return Enumerable.Range(0, samples.Length / block).Max(at => Math.Sqrt(samples.AsSpan(at * block, block).ToArray().Average(sample => sample * sample)));
    }

    private static double Gauss(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
