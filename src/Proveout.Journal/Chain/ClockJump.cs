namespace Proveout.Journal;

/// <summary>
/// An entry that claims a time before that of what was recorded earlier: the clock of the computer was set back in between. The claim is kept as it
/// was made; what came first is told by the sequence.
/// </summary>
/// <param name="Sequence">The entry.</param>
/// <param name="Claimed">The time that it claims.</param>
/// <param name="Before">The time that the entry before it claims.</param>
public sealed record ClockJump(int Sequence, DateTimeOffset Claimed, DateTimeOffset Before)
{
    /// <summary>The jumps in a record.</summary>
    /// <param name="build">The build.</param>
    /// <param name="entries">Its entries, in order.</param>
    public static IReadOnlyList<ClockJump> In(Build build, IReadOnlyList<Entry> entries)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(entries);
        var jumps = new List<ClockJump>();
        var before = build.Started;
        foreach (var entry in entries)
        {
            if (entry.Recorded < before)
                jumps.Add(new ClockJump(entry.Sequence, entry.Recorded, before));
            before = entry.Recorded;
        }
        return jumps;
    }
}
