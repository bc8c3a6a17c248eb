namespace Proveout.Engine.Machine;

/// <summary>What moves a machine: axes, what belts run over, belts and screws, each in file order.</summary>
/// <param name="Axes">Its axes.</param>
/// <param name="Pulleys">Its pulleys and idlers.</param>
/// <param name="Anchors">Where belts are clamped.</param>
/// <param name="Belts">Its belts.</param>
/// <param name="Screws">Its screws.</param>
public sealed record MotionDesign(
    ValueList<Axis> Axes, ValueList<Pulley> Pulleys, ValueList<BeltAnchor> Anchors, ValueList<Belt> Belts, ValueList<Screw> Screws)
{
    /// <summary>Nothing that moves.</summary>
    public static MotionDesign None { get; } = new([], [], [], [], []);

    /// <summary>The pulley with a name, or null.</summary>
    public Pulley? FindPulley(string name) => Pulleys.FirstOrDefault(pulley => pulley.Name == name);

    /// <summary>The anchor with a name, or null.</summary>
    public BeltAnchor? FindAnchor(string name) => Anchors.FirstOrDefault(anchor => anchor.Name == name);

    /// <summary>Every motor that turns a pulley or screw, in file order.</summary>
    public IEnumerable<string> Motors =>
        Pulleys.Where(pulley => pulley.Driven is not null).Select(pulley => pulley.Driven!.Motor).Concat(Screws.Select(screw => screw.Driven.Motor)).Distinct();
}
