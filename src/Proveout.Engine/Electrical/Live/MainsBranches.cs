using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The branches of the mains before the machine's inlets: source, conductors, circuit-breaker, electrodes.</summary>
internal static class MainsBranches
{
    /// <summary>What the mains is called as the subject of its branches.</summary>
    public const string Subject = "outlet";

    /// <summary>Name of the circuit-breaker before the outlet.</summary>
    public const string Breaker = "circuit-breaker";


    /// <summary>Name of the neutral conductor of the outlet.</summary>
    public const string Neutral = "neutral";

    /// <summary>Name of the protective conductor of the outlet, or of the electrode that stands for it.</summary>
    public const string Protective = "protective conductor";

    private const int Earth = -1;
    private const double BreakerOhms = 0.01;

    /// <summary>Adds them; nothing when the machine has no inlet.</summary>
    public static void Add(WiringContext context, MainsSource mains, Func<int> newNode, List<LiveBranch> branches)
    {
        foreach (var (part, connector) in MainsInlets.Of(context.Design))
        {
            int? Contact(TerminalRole role) =>
                MainsInlets.Find(part, connector, role) is { } terminal ? context.Wiring.LandingNode(terminal) : null;
            var (star, behind, parting) = (newNode(), newNode(), newNode());
            Path(branches, "source electrode", star, Earth, mains.SourceEarthOhms);
            branches.Add(new(branches.Count, LiveBranchKind.Mains, behind, star, 1 / mains.LineOhms.Real, Subject, "source", null)
            {
                Volts = mains.Volts,
                Admittance = 1 / mains.LineOhms,
            });
            if (Contact(TerminalRole.Line) is { } line)
                branches.Add(new(branches.Count, LiveBranchKind.Path, behind, line, 1 / BreakerOhms, Subject, Breaker, null)
                {
                    RatedAmperes = mains.BreakerAmperes,
                    Curve = mains.BreakerCurve,
                });
            Path(branches, "combined conductor", star, parting, Math.Max(mains.SharedOhms, 1e-4));
            if (Contact(TerminalRole.Neutral) is { } neutral)
                Path(branches, Neutral, parting, neutral, mains.NeutralOhms - mains.SharedOhms);
            if (Contact(TerminalRole.ProtectiveEarth) is { } protective)
                Path(branches, Protective, protective, IsLocal(mains) ? Earth : parting, mains.ProtectiveOhms);
        }
    }

    private static bool IsLocal(MainsSource mains) => mains.Earthing is SystemEarthing.TT or SystemEarthing.IT;

    private static void Path(List<LiveBranch> branches, string name, int a, int b, double ohms) =>
        branches.Add(new(branches.Count, LiveBranchKind.Path, a, b, 1 / ohms, Subject, name, null));
}
