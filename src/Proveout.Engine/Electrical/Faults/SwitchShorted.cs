using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A semiconductor switch conducts for good: a failed transistor of an output, a failed solid-state relay.</summary>
internal sealed class SwitchShorted : IWiringFaultRule
{
    // What is left of a failed switch; common practice, below one ohm.
    private const double LowOhms = 0.002;
    private const double HighOhms = 1;

    public string Kind => "switch-shorted";

    public string Words => "semiconductor switches that conduct for good";

    public double Prior => Priors.SwitchShorted;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where IsWired(context, element.A) || IsWired(context, element.B)
        where IsOutputTransistor(context, element) || IsRelayLoad(context, element)
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}",
            $"The semiconductor switch {element.Name} of {element.Subject} conducts for good.",
            [element.Subject],
            new Consequence(Severity.Fire, "What it switches runs as soon as the supply is on, whatever it is told."),
            "Live test: the load stays off while the controller is held in reset.",
            new Join(element.A, element.B, LowOhms, HighOhms));

    // The body diode of a transistor lies beside its path, the other way round.
    private static bool IsOutputTransistor(WiringContext context, NetworkElement element) =>
        element.Part is Unpredictable path
        && double.IsPositiveInfinity(element.HighOhms)
        && context.Design.FindPart(element.Subject)!.Type is var type
        && (type.FindTerminal(path.A)?.Role == TerminalRole.Output || type.FindTerminal(path.B)?.Role == TerminalRole.Output)
        && type.Circuit.OfType<Diode>().Any(body => body.A == path.B && body.B == path.A);

    private static bool IsRelayLoad(WiringContext context, NetworkElement element) =>
        element.Part is Insulation load
        && context.Design.FindPart(element.Subject)!.Type is { ClassLetter: "Q" } type
        && type.ConnectorOf(load.A) is { } group
        && group == type.ConnectorOf(load.B);

    private static bool IsWired(WiringContext context, int node) =>
        context.Wiring.Nodes[node] is { Kind: NodeKind.Terminal } terminal && context.IsWired(new TerminalReference(terminal.Subject, terminal.Place));
}
