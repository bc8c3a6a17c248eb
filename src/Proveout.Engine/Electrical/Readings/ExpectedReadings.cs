using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What a hand-held meter shows between any two terminals of a machine in one set-up, and why.</summary>
public sealed class ExpectedReadings
{
    private readonly WiringNetwork _wiring;
    private readonly StateNetwork _state;
    private readonly JunctionBounds _bounds;
    private readonly DiodeReading _diode;
    private readonly ReadingReason _reason;

    /// <summary>Prepares the readings of a set-up.</summary>
    /// <param name="design">The machine; every reference in it resolves.</param>
    /// <param name="setUp">The set-up, one of <see cref="DeadSetUps.Of"/>.</param>
    public ExpectedReadings(MachineDesign design, ElectricalSetUp setUp)
        : this(WiringNetworkBuilder.Build(design), setUp.State)
    {
    }

    /// <summary>Prepares the readings of a state.</summary>
    /// <param name="wiring">The machine's wiring.</param>
    /// <param name="state">Which plugs are apart and where the controls stand.</param>
    public ExpectedReadings(WiringNetwork wiring, MachineState state)
    {
        _wiring = wiring;
        _state = new StateNetwork(wiring, state);
        _bounds = new JunctionBounds(_state);
        _diode = new DiodeReading(wiring, _state);
        _reason = new ReadingReason(wiring, state);
    }

    /// <summary>The reading with the red lead on the first place and that with the leads exchanged.</summary>
    /// <param name="first">A terminal; where its plug is apart, its side is <c>plug</c> or <c>pins</c>.</param>
    /// <param name="second">Another terminal.</param>
    /// <exception cref="KeyNotFoundException">The machine has no such terminal.</exception>
    public (ExpectedReading RedOnFirst, ExpectedReading RedOnSecond) Between(CheckPoint first, CheckPoint second) =>
        (One(first, second), One(second, first));

    private ExpectedReading One(CheckPoint red, CheckPoint black)
    {
        var (a, b) = (ProbeNodes.Of(_wiring, red), ProbeNodes.Of(_wiring, black));
        var (low, high) = _bounds.Resistance(a, b);
        return new ExpectedReading(red, black, MeterMode.Resistance.Shown(low, high), _diode.Shown(a, b, MeterMode.DiodeTest), _reason.Between(a, b));
    }
}
