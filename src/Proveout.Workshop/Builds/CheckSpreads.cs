using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Numerics;

namespace Proveout.Workshop;

/// <summary>Compares the readings that many builds took at one check.</summary>
/// <remarks>
/// The last reading of each build counts. What stands out is decided by the generalised extreme Studentized deviate test, how far it stands out
/// is said in robust deviations. Resistances whose middle half spans more than a factor of two, as those of insulation do, are compared by their
/// logarithms: the test wants readings that are near normal.
/// </remarks>
internal static class CheckSpreads
{
    private const double WideRatio = 2;

    public static CheckSpread Of(PlannedMachine planned, string checkId, IEnumerable<(BuildDigest Build, CheckWord Word)> readers)
    {
        var check = planned.FindCheck(checkId)!;
        var all = readers.ToArray();
        var read = all.Where(reader => !reader.Word.IsSkipped).ToArray();
        var finite = read.Where(reader => double.IsFinite(reader.Word.Value)).ToArray();
        var spread = RobustSpread.Of(finite.Select(reader => reader.Word.Value));
        var apart = spread is { } known ? ApartOf(planned, check, finite, known) : null;
        return new CheckSpread(
            check,
            CheckWords.Expected(check),
            read.Length,
            read.Length - finite.Length,
            all.Length - read.Length,
            all.Count(reader => reader.Word.HasFailed),
            spread,
            spread is { } middle ? SpreadWords(check, middle) : "",
            apart,
            Told(read.Length - finite.Length, finite.Length, apart?.Count));
    }

    /// <summary>Standard uncertainty of a reading by its instrument: half of what it may show for one true value, evenly likely (JCGM 100:2008, 4.3.7).</summary>
    public static double UncertaintyOf(Check check, double value)
    {
        var shown = MeterMode.OfKind(check.Kind).Shown(value, value);
        var half = double.IsFinite(shown.High) ? (shown.High - shown.Low) / 2 : double.IsFinite(shown.Low) ? value - shown.Low : 0;
        return Math.Max(0, half) / Math.Sqrt(3);
    }

    private static IReadOnlyList<ReadingApart>? ApartOf(PlannedMachine planned, Check check, (BuildDigest Build, CheckWord Word)[] finite, RobustSpread spread)
    {
        double[] values = [.. finite.Select(reader => reader.Word.Value)];
        var uncertainty = UncertaintyOf(check, spread.Median);
        var isWide = IsWide(check, values);
        var found = isWide
            ? ExtremeDeviates.Find([.. values.Select(value => Math.Log(value))], uncertainty / spread.Median)
            : ExtremeDeviates.Find(values, uncertainty);
        var logarithms = isWide ? RobustSpread.Of(values.Select(value => Math.Log(value)))!.Value : default;
        return found is null
            ? null
            : [.. found.Select(index => Apart(planned, check, finite[index].Build, values[index], isWide
                ? (Math.Log(values[index]) - logarithms.Median) / Combined(logarithms.Deviation, uncertainty / spread.Median)
                : (values[index] - spread.Median) / Combined(spread.Deviation, uncertainty)))];
    }

    private static double Combined(double deviation, double uncertainty) => Math.Sqrt((deviation * deviation) + (uncertainty * uncertainty));

    private static bool IsWide(Check check, double[] values)
    {
        double[] sorted = [.. values];
        Array.Sort(sorted);
        return check.Unit == "Ω" && sorted[0] > 0 && sorted[3 * sorted.Length / 4] > WideRatio * sorted[sorted.Length / 4];
    }

    private static ReadingApart Apart(PlannedMachine planned, Check check, BuildDigest build, double value, double deviations)
    {
        var shown = CheckWords.Shown(check, value);
        var revision = build.Build.MachineFingerprint == planned.Machine.Fingerprint ? "" : " It was built by another revision of the machine file.";
        return new(
            build.Build.Id.ToString(),
            build.Build.Serial,
            check.Id,
            check.Title,
            shown,
            deviations,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{build.Build.Serial} reads {shown}, {Math.Abs(deviations):0.0} robust deviations {(deviations < 0 ? "below" : "above")} the median of its sisters.{revision}"));
    }

    private static string SpreadWords(Check check, RobustSpread spread) =>
        spread.Count == 1
            ? CheckWords.Shown(check, spread.Median)
            : $"{CheckWords.Shown(check, spread.Median)}, robust deviation {CheckWords.Shown(check, spread.Deviation)}, from {CheckWords.Shown(check, spread.Lowest)} to {CheckWords.Shown(check, spread.Highest)}";

    private static string Told(int over, int finite, int? apart) => (over, finite, apart) switch
    {
        (0, 0, _) => "Nobody has read it yet.",
        (_, 0, _) => "All read over range.",
        (_, _, null) => string.Create(
            CultureInfo.InvariantCulture, $"Cannot tell whether one stands out: {finite} of {ExtremeDeviates.FewestSisters + 1} readings that it takes."),
        (_, _, 0) => "None stands out.",
        (_, _, 1) => "One stands out.",
        _ => string.Create(CultureInfo.InvariantCulture, $"{apart} stand out."),
    };
}
