using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Belts and motors as somebody built them.</summary>
/// <param name="Motion">Belts and pulleys as they are.</param>
/// <param name="Outputs">What each motor output turns.</param>
/// <param name="Slack">Name of a belt without tension; empty when all are tight.</param>
public sealed record BuiltDrives(MotionDesign Motion, ValueList<OutputPlug> Outputs, string Slack)
{
    /// <summary>Built as designed.</summary>
    public static BuiltDrives AsDesigned(MotionDesign motion)
    {
        ArgumentNullException.ThrowIfNull(motion);
        return new(motion, [.. motion.Motors.Select(motor => new OutputPlug(motor, motor, 1))], "");
    }

    /// <summary>True when a belt's path, or a pulley on it, is another than designed.</summary>
    internal bool IsChanged(MotionDesign design, Belt belt) =>
        !belt.Equals(design.Belts.First(other => other.Name == belt.Name))
        || belt.Path.Any(point => !Equals(design.FindPulley(point.At), Motion.FindPulley(point.At)));
}
