using System.Collections.Concurrent;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What rules look at, gathered once: ports, loads, conductors, exposed metal, outputs.</summary>
internal sealed class LiveSights
{
    private readonly ConcurrentDictionary<(LiveExposed Exposed, LiveStage? Stage), bool> _guarded = [];

    public LiveSights(LiveModel model)
    {
        var context = model.Context;
        Ports = [.. LivePort.Of(context)];
        Conductors = [.. context.Wiring.Elements.Where(element => element.Kind == ElementKind.Copper).Select(copper => LiveConductor.Of(context, copper))];
        Loads = [.. LiveLoad.Of(model)];
        Exposed = [.. LiveExposed.Of(model)];
        Rated = [.. LiveRated.Of(model)];
        Wired =
        [
            .. context.Design.Conductors.SelectMany(conductor => new[] { conductor.From, conductor.To }).Distinct()
                .Select(terminal => (terminal, context.Wiring.TerminalNode(terminal))),
        ];
        Guards = [.. LiveGuard.Of(model, Loads)];
    }

    /// <summary>True when the sound machine interrupts an insulation fault at this metal; computed once.</summary>
    public bool IsGuarded(LiveExposed exposed, LiveStage? stage, Func<bool> compute) =>
        _guarded.GetOrAdd((exposed, stage), _ => compute());

    /// <summary>Terminals with a voltage that they bear.</summary>
    public LivePort[] Ports { get; }

    /// <summary>Conductors with what they bear.</summary>
    public LiveConductor[] Conductors { get; }

    /// <summary>What takes power in some state of the sound machine.</summary>
    public LiveLoad[] Loads { get; }

    /// <summary>Metal that a person can touch.</summary>
    public LiveExposed[] Exposed { get; }

    /// <summary>Contacts, outputs and junctions with the current that they bear.</summary>
    public LiveRated[] Rated { get; }

    /// <summary>Terminals that conductors land on.</summary>
    public (TerminalReference Terminal, int Node)[] Wired { get; }

    /// <summary>Protective devices with the loads behind them.</summary>
    public LiveGuard[] Guards { get; }
}
