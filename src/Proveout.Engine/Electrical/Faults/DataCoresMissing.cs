using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A lead that only charges: supply but no data cores.</summary>
internal sealed class DataCoresMissing : IWiringFaultRule
{
    public string Kind => "data-cores-missing";

    public string Words => "leads without data cores";

    public double Prior => Priors.DataCoresMissing;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from connector in part.Type.Connectors
        where connector.Pluggable && connector.Terminals.Any(name => part.Type.FindTerminal(name)!.Role == TerminalRole.Positive)
        from cores in connector.Terminals
            .Where(name => part.Type.FindTerminal(name)!.Role == TerminalRole.Data)
            .SelectMany(name => context.ConductorsAt(new TerminalReference(part.Designation, name)))
            .Where(conductor => conductor.From.Part == part.Designation && IsLead(context, conductor))
            .GroupBy(conductor => context.Design.FindPart(conductor.To.Part)!.Type.ConnectorOf(conductor.To.Terminal))
            .Select(same => same.ToArray())
        where cores.Length == 2
        select WiringContext.Fault(
            this,
            $"{part.Designation}:{connector.Name}",
            $"The lead at {connector.Name} of {part.Designation} has no data cores: it only charges.",
            [part.Designation, connector.Name, .. cores.Select(core => core.Id)],
            new Consequence(Severity.DoesNotWork, "The device has power and never answers."),
            "Label: the lead is marked for data; or try it with a known good one.",
            [.. cores.Select(core => new Cut(context.CopperOf(core).Index))]);

    private static bool IsLead(WiringContext context, Conductor conductor) =>
        context.Design.FindPart(conductor.To.Part)!.Type.ConnectorOf(conductor.To.Terminal) is { Pluggable: true, Family: "data-port" };
}
