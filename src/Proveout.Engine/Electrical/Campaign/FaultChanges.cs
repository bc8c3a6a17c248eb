using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Turns what a fault does to the wiring into changes of the network at one of its limits.</summary>
internal sealed class FaultChanges(StateNetwork state, bool atHigh)
{
    private readonly ElementSwitches _switches = atHigh ? state.SwitchesAtHigh : state.SwitchesAtLow;

    /// <summary>Adds the changes that a fault makes.</summary>
    public void Add(WiringFault fault, List<EdgeChange> changes)
    {
        for (var index = 0; index < fault.Changes.Count; index++)
            if (Of(fault.Changes[index]) is { DeltaConductance.High: not 0 } edge)
                changes.Add(edge);
    }

    private EdgeChange? Of(ElementChange change) => change switch
    {
        Cut cut when state.Wiring.Elements[cut.Element] is { Part: Contact } contact && !state.Conducts(contact) => _switches.Touch(contact),
        Cut cut => _switches.Switch(state.Wiring.Elements[cut.Element], 0),
        Join join when join.A != join.B && !(join.ByPlug && state.State.PlugsApart) =>
            EdgeChange.Add(join.A, join.B, 1 / _switches.Pick(join.LowOhms, join.HighOhms)),
        Invert invert => _switches.Operate(state.Wiring.Elements[invert.Element]),
        AddInSeries series when _switches.Stands(series.Element) => InSeries(state.Wiring.Elements[series.Element], series),
        Replace replace when state.Conducts(state.Wiring.Elements[replace.Element]) =>
            _switches.Switch(state.Wiring.Elements[replace.Element], 1 / _switches.Pick(replace.LowOhms, replace.HighOhms)),
        _ => null,
    };

    private EdgeChange InSeries(NetworkElement element, AddInSeries series) =>
        _switches.Switch(element, 1 / (_switches.Pick(element.LowOhms, element.HighOhms) + _switches.Pick(series.LowOhms, series.HighOhms)));
}
