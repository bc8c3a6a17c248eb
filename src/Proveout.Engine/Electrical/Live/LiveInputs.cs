namespace Proveout.Engine.Electrical;

/// <summary>What feeds sources, and what they take for what they give.</summary>
internal sealed class LiveInputs(LiveCircuit circuit)
{
    // Output over input power of switched-mode supplies and converters; common practice.
    private const double Efficiency = 0.87;

    // A source that lives keeps living down to this share of the voltage that it starts from; from memory.
    private const double KeepsLiving = 0.95;

    // Changes of an input below these shares are not followed: they alter no figure that a limit is compared with.
    private const double DirectShare = 0.05;
    private const double MainsShare = 0.1;
    private const double LeastSiemens = 1e-6;

    private readonly LiveBranch[] _sources = [.. circuit.Branches.Where(branch => branch.Kind is LiveBranchKind.Supply or LiveBranchKind.Held)];

    /// <summary>Finds which sources live; true when any began or ceased.</summary>
    /// <param name="commanded">The commands that are given, by number.</param>
    /// <param name="point">Where the circuit stands.</param>
    /// <param name="free">False when things may only cease.</param>
    public bool UpdateAlive(bool[] commanded, LivePoint point, bool free)
    {
        var changed = false;
        foreach (var source in _sources)
        {
            var lives = Lives(source, commanded, point) && (free || point.Alive[source.Index]);
            changed |= lives != point.Alive[source.Index];
            point.Alive[source.Index] = lives;
            if (!lives)
                point.Mode[source.Index] = LivePoint.Off;
        }

        return changed;
    }

    /// <summary>Finds what each source takes; true when any of it changed.</summary>
    public bool UpdateTaken(ChangedCircuit changed, LivePoint point, int pass, ref bool mainsStale)
    {
        var moved = false;
        foreach (var source in _sources)
        {
            if (source.Input < 0)
                continue;
            var (before, now) = (point.InputSiemens[source.Input], Taken(source, changed, point));
            if (Math.Abs(now - before) <= (Math.Max(now, before) * (source.FedByMains ? MainsShare : DirectShare)) + LeastSiemens)
                continue;
            // Half steps once full ones have not come to rest.
            now = pass < 8 ? now : (now + before) / 2;
            point.InputSiemens[source.Input] = now;
            mainsStale |= source.FedByMains;
            moved = true;
        }

        return moved;
    }

    /// <summary>Current in amperes that all sources give.</summary>
    public double Given(ChangedCircuit changed, LivePoint point) =>
        _sources.Sum(source => Math.Abs(LiveBalance.DcAmperes(source, changed.Siemens[source.Index], point)));

    private static bool Lives(LiveBranch source, bool[] commanded, LivePoint point)
    {
        if (source.Command >= 0 && !commanded[source.Command])
            return false;
        if (source.Port is not { } feed)
            return true;
        var from = Math.Max(feed.Volts, 1) * (point.Alive[source.Index] ? KeepsLiving : 1);
        return FeedVolts(source, point) >= from;
    }

    private static double FeedVolts(LiveBranch source, LivePoint point)
    {
        var feed = source.Port!.Value;
        return source.FedByMains
            ? (LiveBalance.Ac(point, feed.A) - LiveBalance.Ac(point, feed.B)).Magnitude
            : LiveBalance.Dc(point, feed.A) - LiveBalance.Dc(point, feed.B);
    }

    private static double Taken(LiveBranch source, ChangedCircuit changed, LivePoint point)
    {
        var volts = FeedVolts(source, point);
        if (!point.Alive[source.Index] || volts < 1)
            return 0;
        var given = -LiveBalance.DcAmperes(source, changed.Siemens[source.Index], point);
        var across = LiveBalance.Dc(point, source.A) - LiveBalance.Dc(point, source.B);
        // A converter that starts takes no more than what its full output needs at the voltage that it starts from.
        var most = source.LimitAmperes * LiveBalance.SetVolts(source, point) / (Efficiency * source.Port!.Value.Volts);
        return Math.Min(Math.Max(0, given * across) / (Efficiency * volts), most) / volts;
    }
}
