using System.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Where a live circuit stands: what conducts, in which mode its sources are, and the potentials that follow.</summary>
internal sealed class LivePoint
{
    /// <summary>Modes of junctions, supplies and held currents.</summary>
    public const byte Off = 0;

    /// <summary>A junction conducts; a supply holds its voltage.</summary>
    public const byte On = 1;

    /// <summary>A supply or driver holds its limit.</summary>
    public const byte Limiting = 2;

    public LivePoint(LiveCircuit circuit)
    {
        var branches = circuit.Branches.Length;
        (Closed, Mode, AcClosed) = (new bool[branches], new byte[branches], new bool[branches]);
        (InputSiemens, HeldVolts) = (new(circuit.FirstFed, branches), new(circuit.FirstFed, branches));
        Tripped = new bool[branches];
        Alive = new bool[branches];
        Positions = [.. circuit.Controls.Select(control => control.Rest)];
        DcVolts = new double[circuit.NodeCount];
        AcVolts = circuit.Mains is null ? [] : new Complex[circuit.NodeCount];
    }

    private LivePoint(LivePoint other)
    {
        (Closed, Mode, AcClosed) = ((bool[])other.Closed.Clone(), (byte[])other.Mode.Clone(), (bool[])other.AcClosed.Clone());
        (InputSiemens, HeldVolts) = (other.InputSiemens.Copy(), other.HeldVolts.Copy());
        Tripped = (bool[])other.Tripped.Clone();
        Alive = (bool[])other.Alive.Clone();
        Positions = (int[])other.Positions.Clone();
        DcVolts = (double[])other.DcVolts.Clone();
        AcVolts = other.AcVolts;
    }

    /// <summary>Contacts and switches that conduct.</summary>
    public bool[] Closed { get; }

    /// <summary>Junctions that alternating current drives into conduction.</summary>
    public bool[] AcClosed { get; }

    /// <summary>Modes of junctions, supplies and held currents.</summary>
    public byte[] Mode { get; }

    /// <summary>Sources that live on what feeds them.</summary>
    public bool[] Alive { get; }

    /// <summary>Conductance of inputs of sources.</summary>
    public LateValues InputSiemens { get; }

    /// <summary>Voltage that outputs which hold a current follow.</summary>
    public LateValues HeldVolts { get; }

    /// <summary>Protective devices, and contacts of residual-current devices, that have opened.</summary>
    public bool[] Tripped { get; }

    /// <summary>Where each control stands.</summary>
    public int[] Positions { get; }

    /// <summary>Direct potential of each node against earth.</summary>
    public double[] DcVolts { get; }

    /// <summary>Alternating potential of each node against earth, rms; empty without mains. Replaced as a whole, never written into.</summary>
    public Complex[] AcVolts { get; set; }

    public LivePoint Copy() => new(this);
}
