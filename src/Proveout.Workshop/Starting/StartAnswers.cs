namespace Proveout.Workshop;

/// <summary>What a builder knows of a machine, free of contradiction.</summary>
internal sealed record StartAnswers
{
    public required string Name { get; init; }

    /// <summary>Nominal mains voltage, V; 0 when no mains enters the machine.</summary>
    public required int MainsVolts { get; init; }

    /// <summary>As answered: unknown, tn-s, tn-c-s, tt.</summary>
    public required string Earthing { get; init; }

    public required bool HasSwitchedInlet { get; init; }

    /// <summary>As answered; `fitting` when it is to be chosen.</summary>
    public required string Supply { get; init; }

    public required bool HasStop { get; init; }

    public required bool HasMetalFrame { get; init; }

    public required bool HasMetalEnclosure { get; init; }

    public required StartBoard Board { get; init; }

    public required int Motors { get; init; }

    public required int Axes { get; init; }

    /// <summary>As answered: none, low, mains.</summary>
    public required string Plate { get; init; }

    public required double PlateWatts { get; init; }

    public required int HotEnds { get; init; }

    public required double HotEndWatts { get; init; }

    /// <summary>As answered: ntc, pt1000.</summary>
    public required string Sensor { get; init; }

    /// <summary>Solenoid valves of 24 V.</summary>
    public required int Valves { get; init; }

    /// <summary>True when the machine has a socket for a mains tool.</summary>
    public required bool HasSpindle { get; init; }

    public required int Fans { get; init; }

    public required int FanVolts { get; init; }

    public bool HasMains => MainsVolts > 0;

    public bool HasMainsPlate => Plate == "mains";

    public bool HasLowPlate => Plate == "low";

    public bool HasPlate => Plate != "none";

    /// <summary>
    /// True when a device at the inlet looks for residual current: in a TT system a fuse alone does not clear a fault to metal, IEC 60364-4-41 clause 411.5;
    /// what is plugged into a socket wants one of 30 mA in any system, clause 411.3.3.
    /// </summary>
    public bool HasResidualDevice => HasMains && (Earthing == "tt" || HasSpindle);

    /// <summary>Outputs of the board that neither a hot end nor the plate takes, for valves and then for the relay of a spindle.</summary>
    public IReadOnlyList<string> FreeOutputs => [.. Board.Outputs.Skip(HotEnds).SkipLast(HasPlate && Board.PlateOutput is null ? 1 : 0)];
}
