using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Turns what a fault does to the wiring into changes of the network at one of its limits.</summary>
internal sealed class FaultChanges(WiringNetwork wiring, StateNetwork state, bool atHigh)
{
    // A thousand times below what counts as a change of a reading.
    private const double Unseen = 1e-15;

    private readonly ILookup<int, int> _besides = wiring.Elements
        .Where(element => element.Part is not Contact)
        .SelectMany(element => new[] { (Node: element.A, element.Index), (Node: element.B, element.Index) })
        .ToLookup(item => item.Node, item => item.Index);

    private readonly LimitNetwork _limit = atHigh ? state.High : state.Low;

    /// <summary>Adds the changes that a fault makes.</summary>
    public void Add(WiringFault fault, List<EdgeChange> changes)
    {
        for (var index = 0; index < fault.Changes.Count; index++)
            if (Of(fault.Changes[index]) is { DeltaConductance.High: not 0 } edge)
                changes.Add(edge);
    }

    /// <summary>The change that gives an element a conductance in siemens; zero opens it.</summary>
    public EdgeChange Switch(NetworkElement element, double conductance)
    {
        var index = _limit.EdgeOf(element.Index);
        return index < 0 ? EdgeChange.Add(element.A, element.B, conductance)
            : conductance <= 0 ? EdgeChange.TakeAway(index, _limit.Network.EdgeOf(index))
            : EdgeChange.Set(index, _limit.Network.EdgeOf(index), conductance);
    }

    /// <summary>The change that operates an element's control: closes it when it is open at rest, else opens it.</summary>
    public EdgeChange Operate(NetworkElement element) =>
        Switch(element, state.Conducts(element) ? 0 : 1 / Pick(element.LowOhms, element.HighOhms));

    /// <summary>A change too small to see, at an element: the ports around it are then asked; null when nothing else stands there.</summary>
    /// <remarks>
    /// A contact that never closes alters nothing at rest, yet every port that it should alter once operated. No other contact is touched: a control
    /// may move it.
    /// </remarks>
    public EdgeChange? Touch(NetworkElement element)
    {
        if (_limit.EdgeOf(element.Index) is >= 0 and var own)
            return EdgeChange.Set(own, _limit.Network.EdgeOf(own), _limit.Network.EdgeOf(own).Conductance * (1 + Unseen));
        foreach (var beside in _besides[element.A].Concat(_besides[element.B]))
            if (_limit.EdgeOf(beside) is >= 0 and var index)
                return EdgeChange.Set(index, _limit.Network.EdgeOf(index), _limit.Network.EdgeOf(index).Conductance * (1 + Unseen));
        return null;
    }

    private EdgeChange? Of(ElementChange change) => change switch
    {
        Cut cut when wiring.Elements[cut.Element] is { Part: Contact } contact && !state.Conducts(contact) => Touch(contact),
        Cut cut => Switch(wiring.Elements[cut.Element], 0),
        Join join when join.A != join.B && !(join.ByPlug && state.State.PlugsApart) =>
            EdgeChange.Add(join.A, join.B, 1 / Pick(join.LowOhms, join.HighOhms)),
        Invert invert => Operate(wiring.Elements[invert.Element]),
        AddInSeries series when _limit.EdgeOf(series.Element) >= 0 => InSeries(wiring.Elements[series.Element], series),
        Replace replace when state.Conducts(wiring.Elements[replace.Element]) =>
            Switch(wiring.Elements[replace.Element], 1 / Pick(replace.LowOhms, replace.HighOhms)),
        _ => null,
    };

    private EdgeChange InSeries(NetworkElement element, AddInSeries series) =>
        Switch(element, 1 / (Pick(element.LowOhms, element.HighOhms) + Pick(series.LowOhms, series.HighOhms)));

    private double Pick(double lowOhms, double highOhms) => atHigh ? highOhms : lowOhms;
}
