using Proveout.Engine.Motion;
namespace Proveout.Engine.Tests.Motion;
public sealed class Calibrate(ITestOutputHelper output)
{
    [Fact]
    public void Run()
    {
        var kinds = new (string, Func<SyntheticPluck, Random, SyntheticPluck>)[]
        {
            ("clean", (p, r) => p),
            ("noise 20 dB", (p, r) => p with { NoiseRatioDecibels = 20 }),
            ("noise 10 dB", (p, r) => p with { NoiseRatioDecibels = 10 }),
            ("noise 3 dB", (p, r) => p with { NoiseRatioDecibels = 3 }),
            ("stiff .01", (p, r) => p with { Inharmonicity = 0.01, NoiseRatioDecibels = 20 }),
            ("stiff .04", (p, r) => p with { Inharmonicity = 0.04, NoiseRatioDecibels = 20 }),
            ("missing", (p, r) => p with { FundamentalShare = 0, NoiseRatioDecibels = 20 }),
            ("weak fund, stiff", (p, r) => p with { FundamentalShare = 0.1, Inharmonicity = 0.003, NoiseRatioDecibels = 20 }),
            ("hum", (p, r) => p with { HumShare = 0.3, NoiseRatioDecibels = 20 }),
            ("voice .1", (p, r) => p with { VoiceShare = 0.1, NoiseRatioDecibels = 30 }),
            ("voice .3", (p, r) => p with { VoiceShare = 0.3, NoiseRatioDecibels = 30 }),
            ("voice 1", (p, r) => p with { VoiceShare = 1, NoiseRatioDecibels = 30 }),
            ("short ring", (p, r) => p with { DecaySeconds = 0.08, NoiseRatioDecibels = 20 }),
            ("voice only", (p, r) => p with { VoiceShare = 1000 }),
        };
        foreach (var (name, make) in kinds)
        {
            int ok = 0, outside = 0, gross = 0, refused = 0; double worst = 0, sumU = 0; var why = new Dictionary<string, int>(); List<string> bad = [];
            for (var seed = 0; seed < 60; seed++)
            {
                var random = new Random(seed);
                var f = 20 * Math.Pow(20, random.NextDouble());
                var p = make(new SyntheticPluck(f) { Seed = seed, DecaySeconds = 0.12 + 0.4 * random.NextDouble(), PluckPlace = 0.1 + 0.4 * random.NextDouble(), Strokes = [0.2 + 0.3 * random.NextDouble()] }, random);
                var found = PitchFinder.Find(p.Recording());
                if (found.Value is not { } v) { refused++; var k = found.Diagnostics[0].Message; bad.Add($"   r {f:0.0}: {k}"); continue; }
                var e = Math.Abs(v.FundamentalHertz - f);
                sumU += v.ExpandedHertz / f;
                if (e > 0.03 * f) { gross++; bad.Add($"   G {f:0.00} -> {v.FundamentalHertz:0.00} c{v.Confidence:0.00} B{v.Inharmonicity:0.0000} [{string.Join(' ', v.Partials.Select(q => $"{q.Number}:{q.Hertz:0.0}"))}] {v.StartSeconds:0.00}..{v.EndSeconds:0.00}"); }
                else if (e > v.ExpandedHertz) { outside++; bad.Add($"   O {f:0.00} -> {v.FundamentalHertz:0.00}±{v.ExpandedHertz:0.00} c{v.Confidence:0.00} B{v.Inharmonicity:0.0000} [{string.Join(' ', v.Partials.Select(q => $"{q.Number}:{q.Hertz:0.0}"))}] {v.StartSeconds:0.00}..{v.EndSeconds:0.00}"); }
                else ok++;
                worst = Math.Max(worst, e / v.ExpandedHertz);
            }
            output.WriteLine($"{name}: ok {ok} outside {outside} gross {gross} refused {refused}; worst e/U {worst:0.00}; mean U {100 * sumU / Math.Max(1, 60 - refused):0.00} %");
            foreach (var b in bad.Take(7)) output.WriteLine(b);
        }
    }
}
