using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The stage in which the plugs of loads and sensors are pulled from the boards that serve them.</summary>
internal static class UnpluggedStage
{
    /// <summary>What it is called.</summary>
    public const string Name = "plugs of loads and sensors pulled";

    /// <summary>The stage; null when no such plug is there.</summary>
    public static LiveStage? Of(WiringContext context)
    {
        (string Part, string Connector)[] plugs = [.. Plugs(context.Design)];
        return plugs.Length == 0 ? null : LiveStage.WithApart(context, Name, plugs);
    }

    /// <summary>The plugs of outputs, and of inputs with their own zero volt, that something is wired to.</summary>
    public static IEnumerable<(string Part, string Connector)> Plugs(MachineDesign design)
    {
        var wired = design.Conductors.SelectMany(conductor => new[] { conductor.From, conductor.To }).ToHashSet();
        return from part in design.Parts
               where part.Type.ClassLetter == "A"
               from connector in part.Type.Connectors
               where connector.Pluggable
               let roles = connector.Terminals.Select(name => part.Type.FindTerminal(name)!.Role).ToArray()
               where roles.Contains(TerminalRole.Output) || (roles.Contains(TerminalRole.Signal) && roles.Contains(TerminalRole.ZeroVolt))
               where connector.Terminals.Any(name => wired.Contains(new(part.Designation, name)))
               // A plug that also brings the board its supply stays in.
               where !roles.Contains(TerminalRole.Output) || !roles.Contains(TerminalRole.Positive)
               select (part.Designation, connector.Name);
    }
}
