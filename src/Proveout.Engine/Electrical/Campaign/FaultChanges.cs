using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Turns what a fault does to the wiring into changes of one of its limit networks.</summary>
internal static class FaultChanges
{
    /// <summary>The changes at the limit of low resistances.</summary>
    public static List<EdgeChange> AtLow(WiringFault fault, WiringNetwork wiring, StateNetwork state) =>
        At(fault, wiring, state, state.Low, change => (change.LowOhms, change.AddedLowOhms), element => element.LowOhms);

    /// <summary>The changes at the limit of high resistances.</summary>
    public static List<EdgeChange> AtHigh(WiringFault fault, WiringNetwork wiring, StateNetwork state) =>
        At(fault, wiring, state, state.High, change => (change.HighOhms, change.AddedHighOhms), element => element.HighOhms);

    /// <summary>The change that gives an element a conductance in siemens; zero opens it.</summary>
    public static EdgeChange Switch(NetworkElement element, LimitNetwork limit, double conductance)
    {
        var index = limit.EdgeOf(element.Index);
        return index < 0 ? EdgeChange.Add(element.A, element.B, conductance)
            : conductance <= 0 ? EdgeChange.TakeAway(index, limit.Network.EdgeOf(index))
            : EdgeChange.Set(index, limit.Network.EdgeOf(index), conductance);
    }

    private static List<EdgeChange> At(
        WiringFault fault,
        WiringNetwork wiring,
        StateNetwork state,
        LimitNetwork limit,
        Func<Values, (double Ohms, double Added)> pick,
        Func<NetworkElement, double> ohmsOf)
    {
        var changes = new List<EdgeChange>(fault.Changes.Count);
        foreach (var change in fault.Changes)
            switch (change)
            {
                case Cut cut:
                    SetConductance(changes, wiring, limit, cut.Element, 0);
                    break;
                case Join join when join.A != join.B && !(join.ByPlug && state.State.PlugsApart):
                    var joined = 1 / pick(new(join.LowOhms, join.HighOhms, 0, 0)).Ohms;
                    if (joined > 0)
                        changes.Add(EdgeChange.Add(join.A, join.B, joined));
                    break;
                case AddInSeries series when limit.EdgeOf(series.Element) >= 0:
                    var sum = ohmsOf(wiring.Elements[series.Element]) + pick(new(0, 0, series.LowOhms, series.HighOhms)).Added;
                    SetConductance(changes, wiring, limit, series.Element, 1 / sum);
                    break;
                case Replace replace when state.Conducts(wiring.Elements[replace.Element]):
                    SetConductance(changes, wiring, limit, replace.Element, 1 / pick(new(replace.LowOhms, replace.HighOhms, 0, 0)).Ohms);
                    break;
            }

        return changes;
    }

    private static void SetConductance(List<EdgeChange> changes, WiringNetwork wiring, LimitNetwork limit, int element, double conductance)
    {
        var change = Switch(wiring.Elements[element], limit, conductance);
        if (change.DeltaConductance != 0)
            changes.Add(change);
    }

    private readonly record struct Values(double LowOhms, double HighOhms, double AddedLowOhms, double AddedHighOhms);
}
