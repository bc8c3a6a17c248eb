namespace Proveout.Engine.Electrical;

/// <summary>The ports of one set-up as far as they can catch a fault.</summary>
/// <remarks>
/// Whatever true value a meter has before it, what it may show holds that value. So a check surely catches a fault only where the lower limit of the true value lies above all that it may show of the
/// sound machine, or the upper limit below; resistances change nothing else that matters here. At the low limit of resistances no port rises unless the fault takes conductance away, at the high limit
/// none falls unless it adds some (Rayleigh's monotonicity law; Doyle and Snell, Random Walks and Electric Networks, 1984, section 1.4), so for most faults one limit is enough.
/// </remarks>
internal sealed class CatchPorts
{
    // Far above what rounding leaves, far below what a meter tells.
    private const double Rounding = 1e-9;

    private readonly Lazy<LoadPorts> _clipped;
    private readonly Lazy<OpenPorts> _open;

    /// <summary>Finds how far each port has to be altered.</summary>
    /// <param name="table">The ports.</param>
    /// <param name="diodes">The diode tests whose ports follow those of the candidates.</param>
    public CatchPorts(PortTable table, CandidateCheck[] diodes)
    {
        (double Low, double High)[] expected =
        [
            .. table.Candidates.Select(candidate => (candidate.Check.Expectation.Low, candidate.Check.Expectation.High)),
            .. diodes.Select(diode => (diode.Check.Expectation.Low / DiodeTable.Mode.MostAmperes, diode.Check.Expectation.High / DiodeTable.Mode.LeastAmperes)),
        ];
        Low = table.Low.Noticing([.. expected.Select((ohms, port) => Unseen(table.Low, port, ohms.High - table.Low.Ports.Ohms(port)))]);
        // Where nothing at all may be shown of the sound machine, as below half an ohm, less cannot be.
        High = table.High.Noticing([.. expected.Select((ohms, port) => Unseen(table.High, port, table.High.Ports.Ohms(port) - ohms.Low))], port => expected[port].Low > 0);
        MayRise = expected.Any(ohms => ohms.High < double.PositiveInfinity);
        MayFall = expected.Any(ohms => ohms.Low > 0);
        _clipped = new(() => table.LoadsAmong(port => table.Low.Ports.Ohms(port) > expected[port].High));
        _open = new(() => new OpenPorts(High.Ports));
    }

    /// <summary>The ports at the low limit; one that rises by less surely shows nothing that catches a fault.</summary>
    public LimitPorts Low { get; }

    /// <summary>The ports at the high limit; one that falls by less surely shows nothing that catches a fault.</summary>
    public LimitPorts High { get; }

    /// <summary>True when a port can catch a fault by what it shows too much.</summary>
    public bool MayRise { get; }

    /// <summary>True when a port can catch a fault by what it shows too little.</summary>
    public bool MayFall { get; }

    /// <summary>The ports that only junctions or insulation keep down to what is expected: without these they may show too much though their resistance is as it was.</summary>
    /// <remarks>All are of diode tests: a resistance is expected up to what the resistances alone leave at most.</remarks>
    public LoadPorts Clipped => _clipped.Value;

    /// <summary>The ports whose leads are on two islands of the high network.</summary>
    public OpenPorts Open => _open.Value;

    /// <summary>Lists what is listed at first use else, while all other threads wait.</summary>
    public void Prepare()
    {
        _ = (Low.Ports.Passages, High.Ports.Passages);
        if (!Low.HasControls)
            _ = (Clipped, Open);
    }

    private static double Unseen(LimitPorts ports, int port, double neededOhms) =>
        neededOhms > 0 ? Math.Max(ports.Ports.UnseenOhms(port), neededOhms * (1 - Rounding)) : ports.Ports.UnseenOhms(port);
}
