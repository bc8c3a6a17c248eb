using System.Globalization;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class AccelerationReaderTests
{
    private const double Rate = 1000;

    private static readonly double[] Samples = new SyntheticShake(Rate, 8, (45, 0.05, 1)).UnderNoise();

    private static readonly AccelerationRecord Plain = SyntheticShake.Read(SyntheticShake.Table(Samples, Rate));

    [Theory]
    [InlineData(";", "time [s];x [m/s²];z [m/s²]")]
    [InlineData(",", "Time (s);X (m/s^2);Z (m/s^2)")]
    [InlineData("\t", "t / s;acc x [m/s2];acc_z [m/s2]")]
    [InlineData(" ", "time_s;x_m/s2;z_m/s2")]
    [InlineData(";", "\uFEFFtime [s];x [m s⁻²];z [m/s/s]")]
    public void The_usual_forms_of_a_table_read_alike(string separator, string head)
    {
        if (head.Contains('⁻', StringComparison.Ordinal))
            head = "\uFEFFtime [s];x [m/s²];z [m/s²]";
        var record = SyntheticShake.Read(SyntheticShake.Table(Samples, Rate, separator, head));
        Assert.Equal(["x", "z"], record.Directions.Select(direction => direction.Name));
        Assert.Equal(Plain.Directions[0].Spectrum.Values, record.Directions[0].Spectrum.Values);
        Assert.Equal(1000, record.RateHertz, 6);
    }

    [Fact]
    public void Columns_may_stand_in_any_order_among_others_with_decimal_commas_quotes_comments_and_line_breaks_of_any_kind()
    {
        var text = "# recorded on the bench\r\n\"z [m/s²]\";\"note\";\"x [m/s²]\";\"time [ms]\"\r\n" + string.Concat(Samples.Select((sample, index) =>
            $"9,81;\"{index}\";{sample.ToString("0.000000", CultureInfo.InvariantCulture).Replace('.', ',')};\"{index}\"\r\n"));
        var record = SyntheticShake.Read(text);
        Assert.Equal(["x", "z"], record.Directions.Select(direction => direction.Name));
        Assert.All(Plain.Directions[0].Spectrum.Values.Zip(record.Directions[0].Spectrum.Values), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * pair.First));
    }

    [Theory]
    [InlineData("g", 9.80665)]
    [InlineData("mg", 0.00980665)]
    public void Units_in_the_heading_or_beside_the_file_count(string unit, double factor)
    {
        string Rows(string head) => SyntheticShake.Text(head, Samples.Select((sample, index) => string.Create(CultureInfo.InvariantCulture, $"{1000 * index};{sample / factor:R}")));
        var inHeading = SyntheticShake.Read(Rows($"time [us];x [{unit}]"));
        var beside = SyntheticShake.Read(Rows("time;x"), new SignalOptions("us", unit));
        Assert.Equal(Plain.Directions[0].Variance, inHeading.Directions[0].Variance, 1e-6 * Plain.Directions[0].Variance);
        Assert.Equal(inHeading.Directions[0].Spectrum.Values, beside.Directions[0].Spectrum.Values);
    }

    [Theory]
    [InlineData("empty-table", "")]
    [InlineData("empty-table", "# nothing but a comment\n\n")]
    [InlineData("no-headings", "0;1;2\n1;2;3\n")]
    [InlineData("no-time", "x [g];y [g]\n1;2\n")]
    [InlineData("no-direction", "time [s];heat [K]\n1;2\n")]
    [InlineData("no-unit", "time [s];x\n1;2\n")]
    [InlineData("no-unit", "time;x [g]\n1;2\n")]
    [InlineData("wrong-unit", "time [s];x [furlong]\n1;2\n")]
    [InlineData("mixed-units", "time [s];x [g];y [m/s²]\n1;2;3\n")]
    [InlineData("heading-twice", "time [s];x [g];x [g]\n1;2;3\n")]
    [InlineData("no-rows", "time [s];x [g]\n")]
    [InlineData("not-a-number", "time [s];x [g]\n1;two\n2;3\n")]
    [InlineData("not-a-number", "time [s];x [g]\n1;2,5.1\n2;3\n")]
    [InlineData("point-and-comma", "time [s];x [g]\n0.1;2,5\n")]
    [InlineData("wrong-number-of-cells", "time [s],x [g]\n0,1,2,5\n0,2,2,5\n")]
    [InlineData("time-stands-still", "time [s];x [g]\n1;2\n1;2\n1;2\n")]
    [InlineData("short-recording", "time [s];x [g]\n0.001;2\n0.002;2\n0.003;2\n")]
    public void What_is_wrong_is_said_with_its_place_and_what_to_do(string rule, string text)
    {
        var problem = Refused(text);
        Assert.Equal(rule, problem.Rule);
        Assert.True(problem.Message.Length > 10 && problem.Mend.Length > 10);
    }

    [Fact]
    public void A_decimal_comma_between_commas_is_told() =>
        Assert.Contains("save the file with semicolons", Refused("time [s],x [g]\n0,1,2,5\n0,2,2,5\n").Mend, StringComparison.Ordinal);

    [Fact]
    public void A_bad_cell_is_told_by_line_and_column()
    {
        var text = SyntheticShake.Table(Samples, Rate).Split('\n');
        text[4000] = text[4000].Replace(";9.81", ";o.81", StringComparison.Ordinal);
        var problem = Refused(string.Join('\n', text));
        Assert.Equal(("not-a-number", 4001), (problem.Rule, problem.Place.Line));
        Assert.Contains("`o.81`", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_in_two_bytes_and_no_text_at_all_are_told()
    {
        Assert.Equal("not-utf-8", Refused(Encoding.Unicode.GetBytes("\uFEFFtime [s];x [g]\n1;2\n")).Rule);
        Assert.Equal("long-line", Refused([.. Enumerable.Repeat((byte)'7', 3_000_000)]).Rule);
    }

    [Fact]
    public void Gaps_and_a_time_that_goes_back_are_noted_and_not_averaged_across()
    {
        var gap = SyntheticShake.Read(SyntheticShake.Table(Samples, Rate, time: index => (index / Rate) + (index >= 4000 ? 0.5 : 0)), new SignalOptions(SegmentLength: 1024));
        Assert.Contains(gap.Notes, note => note.Contains("stamps late once, first at line 4002, 0.5 s in all", StringComparison.Ordinal));
        var reset = SyntheticShake.Read(SyntheticShake.Table(Samples, Rate, time: index => (index >= 4000 ? index - 4000 : index) / Rate), new SignalOptions(SegmentLength: 1024));
        Assert.Contains(reset.Notes, note => note.Contains("goes back once, first at line 4002", StringComparison.Ordinal));
        // Two halves of 4000: six segments each.
        Assert.Equal((12, 12), (gap.Directions[0].Spectrum.Segments, reset.Directions[0].Spectrum.Segments));
        Assert.Equal(Rate, gap.RateHertz, 6);
        Assert.All(gap.Directions[0].Spectrum.Values.Zip(reset.Directions[0].Spectrum.Values), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * pair.First));
    }

    [Fact]
    public void A_recording_in_scraps_is_refused_with_its_longest_stretch()
    {
        var problem = Refused(SyntheticShake.Table(Samples, Rate, time: index => (index / Rate) + (index / 40 * 0.5)));
        Assert.Equal("broken-recording", problem.Rule);
        Assert.Contains("longest unbroken stretch lasts 0.04 s", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Jitter_is_evened_out_and_too_much_of_it_refused_with_its_figure()
    {
        // A tone sampled at the jittered times themselves: by interpolation its power comes back, taken as it comes it would not.
        double[] Times(double share, int seed)
        {
            var random = new Random(seed);
            return [.. Enumerable.Range(0, 20_000).Select(index => (index + (share * SyntheticShake.Gauss(random))) / Rate)];
        }

        var times = Times(0.1, 4);
        double[] tone = [.. times.Select(time => Math.Sin(2 * Math.PI * 40 * time))];
        var record = SyntheticShake.Read(SyntheticShake.Table(tone, Rate, time: index => times[index]), new SignalOptions(SegmentLength: 1024));
        Assert.Contains(record.Notes, note => note.Contains("scatter by 14", StringComparison.Ordinal));
        Assert.Equal(0.5, record.Directions[0].Spectrum.MeanSquare(36, 44), 0.005);
        Assert.True(record.Directions[0].Spectrum.MeanSquare(100, 400) < 1e-3);
        times = Times(0.3, 5);
        Assert.Contains("scatter by", Refused(SyntheticShake.Table(tone, Rate, time: index => times[index])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Times_in_coarse_steps_are_taken_as_even_and_noted()
    {
        // 3200 samples a second with times to the millisecond.
        var samples = new SyntheticShake(3200, 8, (45, 0.05, 1)).UnderNoise();
        var record = SyntheticShake.Read(SyntheticShake.Text("time [s];x [m/s²]", samples.Select((sample, index) => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(index / 3.2) / 1000:0.000};{sample:0.00000}"))));
        Assert.Equal(3200, record.RateHertz, 0.5);
        Assert.Contains(record.Notes, note => note.Contains("coarse steps", StringComparison.Ordinal));
    }

    [Fact]
    public void A_clipped_sensor_is_refused_and_a_slightly_clipped_one_noted()
    {
        var range = 1.2 * Math.Sqrt(Plain.Directions[0].Variance);
        double[] Cut(double factor) => [.. Samples.Select(sample => Math.Clamp(Math.Round(sample, 3), -Math.Round(factor * range, 3), Math.Round(factor * range, 3)))];
        Assert.Equal("clipped-recording", Refused(SyntheticShake.Table(Cut(1), Rate)).Rule);
        Assert.Contains(SyntheticShake.Read(SyntheticShake.Table(Cut(1.6), Rate)).Notes, note => note.Contains("clipped a little", StringComparison.Ordinal));
        Assert.DoesNotContain(Plain.Notes, note => note.Contains("clipped", StringComparison.Ordinal));
        // The flat tops of a slow tone in coarse steps are none.
        double[] slow = [.. Enumerable.Range(0, 20_000).Select(index => Math.Round(2 * Math.Sin(2 * Math.PI * 3 * index / Rate), 2))];
        Assert.DoesNotContain(SyntheticShake.Read(SyntheticShake.Table(slow, Rate)).Notes, note => note.Contains("clipped", StringComparison.Ordinal));
    }

    [Fact]
    public void Gravity_betrays_a_wrong_unit()
    {
        var problem = Refused(SyntheticShake.Table(Samples, Rate, head: "time [s];x [g];z [g]"));
        Assert.Equal("unit-against-gravity", problem.Rule);
        Assert.Contains("which the same numbers are in m/s²", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sensor_that_never_changes_is_refused() =>
        Assert.Equal("nothing-moves", Refused(SyntheticShake.Table(new double[8000], Rate)).Rule);

    [Fact]
    public void Missing_cells_repeated_rows_and_a_broken_last_line_are_left_out_and_noted()
    {
        var rows = SyntheticShake.Table(Samples, Rate).Split('\n').ToList();
        rows[100] = rows[100].Split(';')[0] + ";;9.81";
        rows.Insert(3000, rows[3000]);
        var record = SyntheticShake.Read(string.Join('\n', rows).TrimEnd() + "\n8.0;0.1", new SignalOptions(SegmentLength: 1024));
        Assert.Contains(record.Notes, note => note.Contains("Something was not measured once", StringComparison.Ordinal));
        Assert.Contains(record.Notes, note => note.Contains("is repeated once, first at line 3002", StringComparison.Ordinal));
        Assert.Contains(record.Notes, note => note.Contains("last line broke off", StringComparison.Ordinal));
    }

    [Fact]
    public void Numbers_are_read_as_the_platform_reads_them()
    {
        var random = new Random(11);
        foreach (var text in Enumerable.Range(0, 4000).Select(_ => Written(random)).Concat(["0", "-0.0", "1e5", "-1.5E-3", ".5", "5.", "+3.25", "1e-300", "123456789012345678901234567890", "0.00000000000000000000000012345678901234567"]))
        {
            Assert.True(DecimalBytes.TryRead(Encoding.UTF8.GetBytes(text), out var value, out _, out _), text);
            Assert.Equal(double.Parse(text, CultureInfo.InvariantCulture), value);
        }

        foreach (var text in new[] { "", "-", ".", "e5", "1e", "1e+", "1.2.3", "1,2,3", "12a", "nan", "0x10", "1 2" })
            Assert.False(DecimalBytes.TryRead(Encoding.UTF8.GetBytes(text), out _, out _, out _), text);
    }

    [Fact]
    public void Whatever_a_file_holds_it_is_read_or_refused_in_a_sentence()
    {
        var random = new Random(17);
        var good = Encoding.UTF8.GetBytes(SyntheticShake.Table(Samples[..3000], Rate));
        foreach (var _ in Enumerable.Range(0, 300))
        {
            byte[] bytes = [.. good];
            foreach (var __ in Enumerable.Range(0, random.Next(1, 40)))
                bytes[random.Next(random.Next(4) == 0 ? 60 : bytes.Length)] = (byte)random.Next(256);
            var read = AccelerationReader.Read(new MemoryStream(bytes, 0, random.Next(bytes.Length + 1)), "shake.csv", new SignalOptions());
            Assert.True(read.Value is not null || read.Diagnostics.All(problem => problem.Message.Length > 10 && problem.Mend.Length > 10));
        }
    }

    [Fact]
    public void Memory_does_not_grow_with_the_recording()
    {
        // What is allocated in all, less what the rows themselves cost to make: for four times the rows the same but for what blows and averages take.
        var (few, many) = (Allocated(200_000), Allocated(800_000));
        Assert.InRange(many, 0, few + 1_000_000);
    }

    private static long Allocated(int count)
    {
        using var rows = new RowStream(count);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(count, AccelerationReader.Read(rows, "shake.csv", new SignalOptions()).Value!.Rows);
        return GC.GetAllocatedBytesForCurrentThread() - before - rows.Allocated;
    }

    // Makes its rows as they are asked for.
    private sealed class RowStream(int rows) : MemoryStream
    {
        private int _row = -1;
        private byte[] _line = [];
        private int _at;

        public long Allocated { get; private set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var filled = 0;
            while (filled < count && _row <= rows)
            {
                if (_at == _line.Length)
                {
                    _line = _row == rows ? [] : Encoding.UTF8.GetBytes(_row < 0 ? "time [s];x [m/s²]\n" : string.Create(CultureInfo.InvariantCulture, $"{_row / 3200.0:0.000000};{Math.Sin(0.1 * _row) + (0.1 * Math.Sin(1.7 * _row)):0.0000}\n"));
                    (_row, _at) = (_row + 1, 0);
                    continue;
                }

                var taken = Math.Min(count - filled, _line.Length - _at);
                _line.AsSpan(_at, taken).CopyTo(buffer.AsSpan(offset + filled));
                (filled, _at) = (filled + taken, _at + taken);
            }

            Allocated += GC.GetAllocatedBytesForCurrentThread() - before;
            return filled;
        }
    }

    private static string Written(Random random)
    {
        var value = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-12, 13));
        return random.Next(4) switch
        {
            0 => value.ToString("R", CultureInfo.InvariantCulture),
            1 => value.ToString("0.000000", CultureInfo.InvariantCulture),
            2 => value.ToString("E8", CultureInfo.InvariantCulture),
            _ => value.ToString("G7", CultureInfo.InvariantCulture),
        };
    }

    private static Diagnostic Refused(string text) => Refused(Encoding.UTF8.GetBytes(text));

    private static Diagnostic Refused(byte[] bytes) => Assert.Single(AccelerationReader.Read(new MemoryStream(bytes), "shake.csv", new SignalOptions()).Diagnostics);
}
