using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What follows from joining or opening nets, by rule from what they carry.</summary>
/// <remarks>Rules of common practice; the order of severity follows IEC 60812 in ranking by the worst effect.</remarks>
internal static class ConsequenceRules
{
    /// <summary>The circuit stays as it is.</summary>
    public static Consequence Nothing { get; } = new(Severity.Hidden, "The circuit stays the same; only the record is wrong.");

    /// <summary>Two nets come together that should not.</summary>
    public static Consequence OfJoining(NetClass one, NetClass two, bool sameMetal)
    {
        if (sameMetal)
            return Nothing;
        var (lower, upper) = one < two ? (one, two) : (two, one);
        return (lower, upper) switch
        {
            (NetClass.Spare, _) => new(Severity.Hidden, "A terminal that nothing is wired to takes the potential of its neighbour."),
            (NetClass.Line, NetClass.ProtectiveEarth) => new(Severity.Shock, "Line meets the protective conductor: the protection trips, or the metal becomes live."),
            (NetClass.Neutral, NetClass.ProtectiveEarth) => new(Severity.Shock, "Neutral meets the protective conductor: it carries load current, and a residual-current device trips."),
            (NetClass.Positive, NetClass.ProtectiveEarth) => new(Severity.Damage, "The positive pole meets the frame: the supply is shorted where 0 V is bonded."),
            (_, NetClass.ProtectiveEarth) => new(Severity.DoesNotWork, "A circuit gets a second path to the frame: currents run where they should not."),
            (NetClass.Neutral, NetClass.Line) => new(Severity.Fire, "Line meets neutral: a short circuit across the mains."),
            (NetClass.Line, NetClass.Line) => new(Severity.Fire, "A switching device in the line is bypassed: the load stays on."),
            (NetClass.Neutral, NetClass.Neutral) => new(Severity.DoesNotWork, "A device in the neutral is bypassed."),
            (NetClass.ZeroVolt, NetClass.ZeroVolt) => new(Severity.DoesNotWork, "A switch in the 0 V is bypassed."),
            (_, NetClass.Line or NetClass.Neutral) => new(Severity.Shock, "Mains voltage reaches the extra-low-voltage side, and what a person touches there."),
            (NetClass.ZeroVolt, NetClass.Positive) => new(Severity.Fire, "The supply is shorted: what has no fuse of its own overheats."),
            (NetClass.Positive, NetClass.Positive) => new(Severity.Damage, "Two supply voltages meet, or a switch in the supply is bypassed: a load is destroyed, or cannot be switched off."),
            (NetClass.Signal, NetClass.Positive) => new(Severity.Damage, "Supply voltage reaches a signal: the input or output is destroyed, or a load stays on."),
            _ => new(Severity.DoesNotWork, "Two circuits are joined: one of them does not do what it should."),
        };
    }

    /// <summary>A path of a net is open or poor.</summary>
    /// <param name="net">What it carries.</param>
    /// <param name="heavyCurrent">True when the conductor is sized for a power circuit.</param>
    /// <param name="poorOnly">True when it still conducts, with resistance.</param>
    public static Consequence OfOpening(NetClass net, bool heavyCurrent, bool poorOnly) => net switch
    {
        NetClass.ProtectiveEarth => new(Severity.Shock, "The protection against touching live metal is missing: an insulation fault stays live."),
        NetClass.Line or NetClass.Neutral when poorOnly => new(Severity.Fire, "The joint heats under load."),
        _ when poorOnly && heavyCurrent => new(Severity.Fire, "The joint heats under load, or the voltage behind it is low."),
        _ when poorOnly => new(Severity.DoesNotWork, "Readings drift or the signal comes and goes."),
        NetClass.ZeroVolt => new(Severity.Damage, "What hangs on it loses its 0 V: current finds another way back through signal conductors."),
        _ => new(Severity.DoesNotWork, "What hangs on it does not work."),
    };
}
