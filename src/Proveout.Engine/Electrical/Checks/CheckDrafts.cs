using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Writes the candidates of one set-up: identifiers, words, cost.</summary>
internal sealed class CheckDrafts(int setUpIndex, string setUp, ProbePlaces places)
{
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    /// <summary>A check between two nodes.</summary>
    /// <param name="mode">How it is measured.</param>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="black">Node of the black lead.</param>
    /// <param name="expectation">What the machine as designed shows.</param>
    /// <param name="tied">Node that a short lead joins to that of the red lead; null when none does.</param>
    public CandidateCheck Of(MeterMode mode, int red, int black, ReadingInterval expectation, int? tied = null)
    {
        var points = new ValueList<CheckPoint>([places.PointOf(red), places.PointOf(black)]);
        var joined = tied is { } other ? places.PointOf(other).ToString() : "";
        var check = new Check(
            Identifier(mode, points),
            mode.Kind,
            setUp,
            joined.Length == 0 ? $"{points[0]} to {points[1]}" : $"{points[0]} and {joined}, joined, to {points[1]}",
            (joined.Length == 0 ? "" : $"Join {points[0]} and {joined} by a short lead. ") + $"Red lead on {points[0]}, black lead on {points[1]}.{mode.Caution}",
            points,
            mode.Unit,
            expectation,
            "",
            mode.Seconds)
        {
            MindsPolarity = mode != MeterMode.FourWire, // so little voltage that no junction conducts
            DoLast = mode.StrainsWiring,
        };
        return new CandidateCheck(check, setUpIndex, red, black, mode, tied);
    }

    // Readings of resistance had their identifiers before there were other kinds; journals hold them.
    private string Identifier(MeterMode mode, ValueList<CheckPoint> points)
    {
        var kind = mode is ResistanceMode ? "" : mode.Kind + "-";
        var plain = $"{setUp}-{kind}{Plain(points[0])}-{Plain(points[1])}";
        var unique = plain;
        for (var number = 2; !_taken.Add(unique); number++)
            unique = FormattableString.Invariant($"{plain}-{number}");
        return unique;
    }

    private static string Plain(CheckPoint point)
    {
        var name = $"{point.Subject}.{point.Place}{(point.Side.Length > 0 ? "." + point.Side : "")}"
            .Replace("+", "plus", StringComparison.Ordinal)
            .Replace("-", "minus", StringComparison.Ordinal);
        return string.Concat(name.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '.' ? letter : '_'));
    }
}
