using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A differential pair has one terminator more than its two ends.</summary>
internal sealed class TerminatorExtra : IWiringFaultRule
{
    // 120 ohm within 5 %; ISO 11898-2.
    private const double LowOhms = 114;
    private const double HighOhms = 126;

    public string Kind => "terminator-extra";

    public string Words => "terminators too many";

    public double Prior => Priors.TerminatorExtra;

    public IEnumerable<WiringFault> Generate(WiringContext context)
    {
        var done = new List<TerminalReference>();
        foreach (var conductor in context.Design.Conductors)
            foreach (var (high, low) in PairsAt(context, conductor.From).Concat(PairsAt(context, conductor.To)))
            {
                if (done.Any(seen => context.AreSame(seen, high)))
                    continue;
                done.Add(high);
                yield return OfPair(context, high, low);
            }
    }

    private WiringFault OfPair(WiringContext context, TerminalReference high, TerminalReference low) => WiringContext.Fault(
        this,
        $"{high}:{low}",
        $"The pair {high} and {low} has one terminator too many.",
        [high.Part],
        new Consequence(Severity.DoesNotWork, "The signal is too small: errors with length and rate, or no communication."),
        "Eye: a terminator at the two ends of the line and nowhere else.",
        new Join(context.Wiring.LandingNode(high), context.Wiring.LandingNode(low), LowOhms, HighOhms));

    // A terminator stands between the two data terminals of a part, straight or behind a jumper.
    private static IEnumerable<(TerminalReference High, TerminalReference Low)> PairsAt(WiringContext context, TerminalReference terminal)
    {
        var part = context.Design.FindPart(terminal.Part)!;
        if (!IsData(part, terminal.Terminal))
            return [];
        return from resistor in part.Type.Circuit.OfType<Resistor>()
               where resistor.Value.Low.Ohms >= 100 && resistor.Value.High?.Ohms <= 140
               where resistor.A == terminal.Terminal || resistor.B == terminal.Terminal
               let far = resistor.A == terminal.Terminal ? resistor.B : resistor.A
               let other = IsData(part, far) ? far : part.Type.Jumpers.FirstOrDefault(jumper => jumper.Positions.Any(position => position.Post == far))?.Common
               where other is not null && IsData(part, other) && context.IsWired(terminal with { Terminal = other })
               select (terminal, terminal with { Terminal = other });
    }

    private static bool IsData(Part part, string name) => part.Type.FindTerminal(name)?.Role == TerminalRole.Data;
}
