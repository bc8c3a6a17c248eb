namespace Proveout.Publish.Drawings;

/// <summary>
/// The room between two layers: every wire turns on an upright track of its own there. Two wires may not lie on each other where one comes from the row that
/// another goes to; so the first turns before the second, and where such rows form a circle one wire makes a step (channel routing).
/// </summary>
internal sealed class Channel
{
    private readonly List<(int Low, int High, int Track)> _taken = [];

    public Channel(IReadOnlyList<Block> left)
    {
        Runs = [.. left.SelectMany(block => block.Ends).Where(end => end.IsRight).Select(end => new Run(end, end.Far))];
        var bent = Runs.Where(run => !run.IsStraight).ToList();
        // Downward wires turn the lowest first, upward ones the highest first: then neighbours do not cross.
        var open = bent.Where(run => run.To > run.From).OrderByDescending(run => run.From).Concat(bent.Where(run => run.To < run.From).OrderBy(run => run.From)).ToList();
        var byFrom = bent.ToDictionary(run => run.From);
        while (open.Count > 0)
        {
            var next = open.Find(run => Before(run) is not { } other || other.Track is not null);
            if (next is null)
                Step(open[0]);
            else
            {
                next.SecondTrack = null;
                next.Track = Take(next.From, next.To, Before(next) is { } other ? LastOf(other) + 1 : 0);
                open.Remove(next);
            }
        }

        foreach (var run in bent.Where(run => run.SecondTrack == int.MaxValue))
            run.SecondTrack = Take(run.From + 1, run.To, Math.Max(run.Track!.Value, Before(run) is { } other ? other.Track!.Value : 0) + 1);
        Tracks = _taken.Count == 0 ? 0 : _taken.Max(each => each.Track) + 1;

        // The wire that comes from the row that this one goes to.
        Run? Before(Run run) => byFrom.GetValueOrDefault(run.To);

        void Step(Run run)
        {
            run.Track = Take(run.From, run.From + 1, 0);
            run.SecondTrack = int.MaxValue;
            open.Remove(run);
        }
    }

    public IReadOnlyList<Run> Runs { get; }

    public int Tracks { get; }

    // What leaves its row on its first track frees that row from there on.
    private static int LastOf(Run run) => run.Track!.Value;

    private int Take(int from, int to, int least)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var track = least;
        while (_taken.Exists(each => each.Track == track && each.Low <= high && low <= each.High))
            track++;
        _taken.Add((low, high, track));
        return track;
    }
}
