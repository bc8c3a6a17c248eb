namespace Proveout.Engine.Machine;

/// <summary>The way of a conductor from terminal to terminal.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="Legs">Its stretches, in order.</param>
/// <param name="SlackMm">Spare length that it keeps at both ends together.</param>
/// <param name="Missing">What is not known of it, in a sentence's end such as <c>`A1` has no place</c>; null when its length is known.</param>
public sealed record ConductorWay(Conductor Conductor, IReadOnlyList<WayLeg> Legs, double SlackMm, string? Missing)
{
    // Wire is cut to whole centimetres: common practice.
    private const double StepMm = 10;

    /// <summary>Length along the way, without slack.</summary>
    public double WayMm => Legs.Sum(leg => leg.LengthMm);

    /// <summary>True when the machine file gives a length, and the way alone is longer.</summary>
    public bool IsLongerThanGiven => Missing is null && !Conductor.LengthIsComputed && Conductor.Length.Millimeters < WayMm;

    /// <summary>Length to cut: way and slack, rounded up to whole centimetres.</summary>
    public double CutMm => Math.Max(StepMm, Math.Ceiling(Math.Round((WayMm + SlackMm) / StepMm, 6)) * StepMm);
}
