namespace Proveout.Engine.Faults;

/// <summary>Where the person at the bench stands: what the next check costs depends on it.</summary>
/// <param name="SetUp">Identifier of the set-up that stands now; empty when none does.</param>
/// <param name="Probes">Where the probes touch now; empty when they touch nothing.</param>
public sealed record BenchPosition(string SetUp, IReadOnlyList<CheckPoint> Probes)
{
    // Of the time of a check about a third goes to each probe and a third to reading and writing down (from memory).
    private const double ShareOfProbe = 1.0 / 3;

    /// <summary>The position before anything is done.</summary>
    public static BenchPosition Start { get; } = new("", []);

    /// <summary>The position after a check.</summary>
    public static BenchPosition After(Check check) => new(check.SetUp, check.Points);

    /// <summary>The position after the check with an identifier; the start when there is none.</summary>
    public static BenchPosition After(FaultDictionary dictionary, string? check) =>
        check is not null && dictionary.IndexOfCheck(check) is { } index ? After(dictionary.Checks[index]) : Start;

    /// <summary>Seconds that a check takes from here: to change the set-up, to move the probes that do not stand there already, to read.</summary>
    public double SecondsOf(FaultDictionary dictionary, int check)
    {
        var about = dictionary.Checks[check];
        if (about.SetUp != SetUp)
            return about.CostSeconds + dictionary.SetUps.First(setUp => setUp.Id == about.SetUp).CostSeconds;
        var standing = about.Points.Count(Probes.Contains);
        return about.CostSeconds * (1 - (ShareOfProbe * standing));
    }
}
