using Proveout.Engine.Faults;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What is known of a machine's belts and axes before they are fitted.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Findings">What cannot be right, or is not good practice.</param>
/// <param name="Belts">Its belts.</param>
/// <param name="Motors">What moves for a turn of each motor.</param>
/// <param name="Table">The fewest checks, and what each mistake does.</param>
/// <param name="Alike">Mistakes that no check tells apart, as sentences.</param>
/// <param name="Axes">Its axes: name, lowest and highest coordinate in mm.</param>
public sealed record BeltsView(
    MachineSummary Machine,
    IReadOnlyList<BeltFinding> Findings,
    IReadOnlyList<BeltRow> Belts,
    IReadOnlyList<MotorRow> Motors,
    MistakeTable Table,
    IReadOnlyList<IReadOnlyList<string>> Alike,
    IReadOnlyList<(string Name, double LowMm, double HighMm)> Axes)
{
    /// <summary>What can be said of the machine by who sees it move.</summary>
    public IReadOnlyList<SeenQuestion> Questions { get; init; } = [];

    internal FaultDictionary Dictionary { get; init; } = new([], [], [], []);

    /// <summary>Cautions of everything that is done, each once; to isolate comes before all that is done by hand.</summary>
    public IReadOnlyList<string> Cautions =>
        [.. Table.SetUps.SelectMany(setUp => setUp.Cautions).Distinct().OrderByDescending(caution => caution.StartsWith("Isolate", StringComparison.Ordinal))];
}

/// <summary>A belt in figures.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsClosed">True for a loop.</param>
/// <param name="ShortestMm">Shortest path over the travel.</param>
/// <param name="LongestMm">Longest.</param>
/// <param name="IsConstant">True when it stays the same at every place looked at.</param>
/// <param name="CutMm">Length to cut; of a loop its length.</param>
/// <param name="Teeth">Teeth of that.</param>
/// <param name="TrimMm">What to trim at each end when tension has settled.</param>
/// <param name="Bends">Its bends in order.</param>
public sealed record BeltRow(string Name, bool IsClosed, double ShortestMm, double LongestMm, bool IsConstant, double CutMm, int Teeth, double TrimMm, IReadOnlyList<BendRow> Bends);

/// <summary>A bend of a belt.</summary>
/// <param name="Pulley">The pulley.</param>
/// <param name="Turn">Which way: <c>left</c> or <c>right</c>.</param>
/// <param name="Side">Which side touches: <c>teeth</c> or <c>back</c>.</param>
/// <param name="WrapDegrees">Angle of wrap.</param>
/// <param name="TeethInMesh">Teeth in mesh.</param>
public sealed record BendRow(string Pulley, string Turn, string Side, double WrapDegrees, double TeethInMesh);

/// <summary>What a motor moves.</summary>
/// <param name="Motor">Its designation.</param>
/// <param name="IsTied">True when it moves only together with others.</param>
/// <param name="Axes">For each axis that it moves: name, turns for a millimetre, millimetres for a turn, full steps for a millimetre.</param>
public sealed record MotorRow(string Motor, bool IsTied, IReadOnlyList<MotorShare> Axes);

/// <summary>What a motor has to do with an axis.</summary>
/// <param name="Axis">The axis.</param>
/// <param name="TurnsPerMm">Turns for a millimetre of this axis alone.</param>
/// <param name="MmPerTurn">Millimetres for a turn of this motor alone; its share when motors turn together.</param>
/// <param name="MmPerFullStep">Movement for a full step when all its motors turn as they should.</param>
public sealed record MotorShare(string Axis, double TurnsPerMm, double MmPerTurn, double MmPerFullStep);
