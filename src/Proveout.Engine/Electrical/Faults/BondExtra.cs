using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>0 V meets protective earth a second time, or neutral meets it inside the machine.</summary>
internal sealed class BondExtra : IWiringFaultRule
{
    private const double LowOhms = 0.0005;
    private const double HighOhms = 0.05;

    public string Kind => "bond-extra";

    public string Words => "bonds where none should be";

    public double Prior => Priors.BondExtra;

    public IEnumerable<WiringFault> Generate(WiringContext context)
    {
        var metals = new MetalPlaces(context);
        return ZeroVolt(context, metals).Concat(Neutral(context));
    }

    // A board screw, a screen, a screened plug: the 0 V of a board or supply touches the metal that carries it.
    private IEnumerable<WiringFault> ZeroVolt(WiringContext context, MetalPlaces metals) =>
        from part in context.Design.Parts
        where part.Type.ClassLetter is "A" or "T" or "P"
        let zero = TerminalPairs.WiredTerminals(context, part).Where(terminal => context.Design.FindTerminal(terminal)!.Role == TerminalRole.ZeroVolt).Take(1)
        from terminal in zero
        let metal = metals.InPlaceOf(part.Designation)
        where metal is not null
        select OfPair(
            context,
            terminal,
            metal.Value,
            $"0 V of {part.Designation} touches the metal of {metal.Value.Part}: a bond where none should be.",
            new Consequence(Severity.DoesNotWork, "The protective conductor carries load current: hum, and readings that shift when motors run."),
            "Lift the intended bond and read 0 V to protective earth: open.");

    private IEnumerable<WiringFault> Neutral(WiringContext context) =>
        from part in context.Design.Parts
        let wired = TerminalPairs.WiredTerminals(context, part).ToArray()
        let neutral = wired.Where(terminal => context.Design.FindTerminal(terminal)!.Role == TerminalRole.Neutral).Take(1)
        let earth = wired.Where(terminal => context.Design.FindTerminal(terminal)!.Role == TerminalRole.ProtectiveEarth).Take(1)
        from n in neutral
        from pe in earth
        select OfPair(
            context,
            n,
            pe,
            $"Neutral and protective earth are joined at {part.Designation}.",
            ConsequenceRules.OfJoining(NetClass.Neutral, NetClass.ProtectiveEarth, sameMetal: false),
            "Ohms from the plug's neutral pin to its earth pin: open.");

    private WiringFault OfPair(
        WiringContext context, TerminalReference one, TerminalReference two, string sentence, Consequence consequence, string otherEvidence) => WiringContext.Fault(
        this,
        $"{one}:{two}",
        sentence,
        [one.Part, two.Part],
        consequence,
        otherEvidence,
        new Join(context.Wiring.TerminalNode(one), context.Wiring.TerminalNode(two), LowOhms, HighOhms));
}
