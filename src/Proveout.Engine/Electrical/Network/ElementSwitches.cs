using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Turns other conductances of elements into changes of the network of a state at one of its limits.</summary>
internal sealed class ElementSwitches(WiringNetwork wiring, StateNetwork state, bool atHigh)
{
    // A thousand times below what counts as a change of a reading.
    private const double Unseen = 1e-15;

    private readonly ILookup<int, int> _besides = wiring.Elements
        .Where(element => element.Part is not Contact)
        .SelectMany(element => new[] { (Node: element.A, element.Index), (Node: element.B, element.Index) })
        .ToLookup(item => item.Node, item => item.Index);

    private readonly LimitNetwork _limit = atHigh ? state.High : state.Low;

    /// <summary>True when an element carries current in the state.</summary>
    public bool Stands(int element) => _limit.EdgeOf(element) >= 0;

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

    /// <summary>That one of two limits at which the network is.</summary>
    public double Pick(double low, double high) => atHigh ? high : low;
}
