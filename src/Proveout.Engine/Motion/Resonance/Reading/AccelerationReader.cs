using System.Numerics;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Reads a table of accelerations from a stream, however long, in bounded memory, and averages its power spectra on the way.</summary>
public static class AccelerationReader
{
    // The first rows are held to learn the rate and the length of a short recording: 20 s at 3.2 kHz.
    private const int HeadRows = 65_536;
    private const int LongestSegment = 65_536;
    private const int ShortestSegment = 64;

    // Segments that a short recording shall at least be cut into, at half overlap: 2.5 lengths hold four.
    private const double LeastLengths = 2.5;

    /// <summary>Reads the stream to its end, or says why it cannot be used and what to do.</summary>
    /// <param name="stream">The bytes of the file; not closed.</param>
    /// <param name="name">Name of the file as the user gave it.</param>
    /// <param name="options">How to read it.</param>
    public static Outcome<AccelerationRecord> Read(Stream stream, string name, SignalOptions options)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(options);
        var opened = SignalRows.Of(stream, name, options);
        if (opened.Value is not { } rows)
            return Outcome.Refused<AccelerationRecord>(opened.Diagnostics);
        var head = new SignalHead(rows, HeadRows);
        if (rows.Problem is { } early)
            return Outcome.Refused<AccelerationRecord>([early]);
        if (SampleClock.Of(head.Times, head.TimePower) is not { } clock)
            return SignalVerdict.NoTime(name, head.Times.Length);
        if (clock.Scatter > SampleClock.MostScatter)
            return SignalVerdict.Uneven(name, clock.Scatter, 0);
        var columns = rows.Columns;
        var length = options.SegmentLength ?? SegmentLength(1 / (clock.Interval * columns.SecondsByUnit), options.ResolutionHertz, head.IsWhole ? head.Times.Length : null);
        var samples = new SignalStream(clock, columns.SecondsByUnit, columns.Directions.Count, length);
        var count = Pour(head, rows, samples);
        return rows.Problem is { } problem
            ? Outcome.Refused<AccelerationRecord>([problem])
            : new SignalVerdict(name, rows, clock, samples, count, head.Missing).Result();
    }

    private static long Pour(SignalHead head, SignalRows rows, SignalStream samples)
    {
        var width = rows.Columns.Directions.Count;
        for (var index = 0; index < head.Times.Length; index++)
            samples.Add(head.Times[index], head.Values(index), head.Line(index));
        var count = (long)head.Times.Length;
        Span<double> row = stackalloc double[width + 1];
        while (!head.IsWhole && rows.TryNext(row))
        {
            if (SignalHead.IsComplete(row))
                samples.Add(row[0], row[1..], rows.Line);
            else
                head.Missing++;
            count++;
        }

        samples.Finish();
        return count;
    }

    private static int SegmentLength(double rate, double resolution, int? rows)
    {
        var wanted = (int)Math.Clamp(BitOperations.RoundUpToPowerOf2((ulong)Math.Ceiling(rate / resolution)), ShortestSegment, LongestSegment);
        return rows is not { } few ? wanted
            : Math.Clamp(1 << BitOperations.Log2((uint)Math.Max(1, few / LeastLengths)), ShortestSegment, wanted);
    }
}
