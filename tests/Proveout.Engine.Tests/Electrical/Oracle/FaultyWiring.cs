using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>The resistors of a machine with a fault in it, listed element by element, for <see cref="LoopAnalysis"/>.</summary>
internal sealed class FaultyWiring
{
    private readonly WiringNetwork _wiring;
    private readonly MachineState _state;

    /// <summary>Lists the wiring in a state; a null fault means as designed.</summary>
    public FaultyWiring(WiringNetwork wiring, MachineState state, WiringFault? fault)
    {
        (_wiring, _state) = (wiring, state);
        var changes = fault?.Changes ?? [];
        Low = Resistors(changes, low: true);
        High = Resistors(changes, low: false);
    }

    /// <summary>Every resistor at its low limit.</summary>
    public Resistor[] Low { get; }

    /// <summary>Every resistor at its high limit.</summary>
    public Resistor[] High { get; }

    private Resistor[] Resistors(IReadOnlyList<ElementChange> changes, bool low)
    {
        var list = new List<Resistor>();
        foreach (var element in _wiring.Elements)
        {
            var ohms = Conducts(element) ? Pick(element.LowOhms, element.HighOhms, low) : double.PositiveInfinity;
            foreach (var change in changes)
                ohms = change switch
                {
                    Cut cut when cut.Element == element.Index => double.PositiveInfinity,
                    Invert invert when invert.Element == element.Index =>
                        Conducts(element) ? double.PositiveInfinity : Pick(element.LowOhms, element.HighOhms, low),
                    AddInSeries series when series.Element == element.Index => ohms + Pick(series.LowOhms, series.HighOhms, low),
                    Replace replace when replace.Element == element.Index && Conducts(element) => Pick(replace.LowOhms, replace.HighOhms, low),
                    _ => ohms,
                };
            list.Add(new Resistor(element.A, element.B, ohms));
        }

        foreach (var join in changes.OfType<Join>())
            if (!join.ByPlug || !_state.PlugsApart)
                list.Add(new Resistor(join.A, join.B, Pick(join.LowOhms, join.HighOhms, low)));
        return [.. list.Where(resistor => resistor.A != resistor.B && double.IsFinite(resistor.Ohms))];
    }

    private bool Conducts(NetworkElement element)
    {
        if (element.Kind == ElementKind.Mating)
            return !_state.PlugsApart;
        if (element.Part is not Contact contact)
            return true;
        var control = _wiring.Design.Parts.Single(part => part.Designation == element.Subject).Type.Controls.Single(item => item.Name == contact.Control);
        return contact.ClosedAt.Contains(_state.PositionOf(element.Subject, control.Name) ?? control.Rest);
    }

    private static double Pick(double lowOhms, double highOhms, bool low) => low ? lowOhms : highOhms;
}
