namespace Proveout.Engine.Motion;

/// <summary>Finds where something was struck and then died away: steep rises of energy, and what follows until the next or until the room is heard again.</summary>
internal static class Plucks
{
    private const double FrameSeconds = 0.005;

    // Energy of 40 ms against the 40 ms before.
    private const int Span = 8;
    private const double LeastRise = 3;

    // A stroke is over at once; a voice swells. Energy 15 ms after the rise against the most of the next 120 ms.
    private const int StrokeFrames = 3;
    private const int SwellFrames = 24;
    private const double MostSwell = 2;

    // A rise that leads to less than this share of the loudest is not looked at.
    private const double LeastShare = 0.01;

    // The stroke itself takes some 15 ms and is no free vibration yet.
    private const double StrokeSeconds = 0.015;
    private const double LongestSeconds = 0.8;

    // Over less than this it cannot be seen whether the pitch holds.
    private const double ShortestSeconds = 0.13;

    // The ring is followed until its energy is this near to the room's, or this far below its start.
    private const double AboveRoom = 3;
    private const double BelowStart = 1e-3;
    private const int Most = 8;

    /// <summary>The strokes, in order of time.</summary>
    public static IReadOnlyList<Pluck> In(SoundBand band)
    {
        var frame = (int)Math.Max(1, FrameSeconds * band.RateHertz);
        var energy = Energies(band.Samples, frame);
        if (energy.Length <= 2 * Span)
            return [];
        int[] rises = [.. Rises(energy)];
        var loudest = rises.OrderByDescending(at => energy[at]).Take(Most).ToHashSet();
        List<Pluck> plucks = [];
        for (var index = 0; index < rises.Length; index++)
        {
            var next = index + 1 < rises.Length ? rises[index + 1] - 2 : energy.Length;
            if (loudest.Contains(rises[index]) && Ring(band, energy, frame, rises[index], next) is { } ring)
                plucks.Add(new Pluck(ring, index == 0 ? Room(ring, rises[index], frame) : default, energy[rises[index]]));
        }

        return plucks;
    }

    private static IEnumerable<int> Rises(double[] energy)
    {
        var loudest = energy.Max();
        if (energy[0] > loudest / 4)
            yield return 0;
        var rise = new double[energy.Length];
        for (var at = Span; at < energy.Length; at++)
            rise[at] = energy[at] / (energy[at - Span] + (1e-9 * loudest));
        for (var at = Span; at < energy.Length; at++)
        {
            var isSteepest = rise.Skip(at - Span).Take((2 * Span) + 1).All(other => other <= rise[at]);
            if (isSteepest && rise[at] >= LeastRise && energy[at] >= LeastShare * loudest && !Swells(energy, at))
                yield return at;
        }
    }

    private static bool Swells(double[] energy, int at) =>
        energy.Skip(at + StrokeFrames).Take(SwellFrames).DefaultIfEmpty(0).Max() > MostSwell * energy[Math.Min(at + StrokeFrames, energy.Length - 1)];

    private static Stretch? Ring(SoundBand band, double[] energy, int frame, int rise, int next)
    {
        var room = rise > 2 * Span ? energy[(rise - (2 * Span))..(rise - Span)].Min() : energy.Order().ElementAt(energy.Length / 10);
        var least = Math.Max(AboveRoom * room, BelowStart * energy[rise]);
        var stop = rise + 1;
        while (stop < next && energy[stop] > least)
            stop++;
        var start = (rise * frame) + (int)(StrokeSeconds * band.RateHertz);
        // Energies look forward, so the last frame above the limit still rings for their span.
        var end = Math.Min(Math.Min((stop * frame) + (stop < next ? Span / 2 * frame : 0), start + (int)(LongestSeconds * band.RateHertz)), band.Samples.Length);
        return end - start < ShortestSeconds * band.RateHertz ? null : new Stretch(start, end);
    }

    private static Stretch Room(Stretch ring, int rise, int frame)
    {
        var end = Math.Max(0, (rise - 2) * frame);
        return new Stretch(Math.Max(0, end - ring.Length), end);
    }

    // Mean square of the 40 ms from each frame on.
    private static double[] Energies(double[] samples, int frame)
    {
        var sums = new double[(samples.Length / frame) + 1];
        for (var at = 0; at + 1 < sums.Length; at++)
        {
            var sum = 0.0;
            foreach (var sample in samples.AsSpan(at * frame, frame))
                sum += sample * sample;
            sums[at + 1] = sums[at] + sum;
        }

        return [.. Enumerable.Range(0, Math.Max(0, sums.Length - 1)).Select(at =>
        {
            var end = Math.Min(at + Span, sums.Length - 1);
            return (sums[end] - sums[at]) / ((end - at) * frame);
        })];
    }
}
