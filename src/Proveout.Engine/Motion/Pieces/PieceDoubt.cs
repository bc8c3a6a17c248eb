namespace Proveout.Engine.Motion;

/// <summary>What makes readings of a test piece doubtful.</summary>
/// <param name="Calliper">The calliper; the readings are without its known errors already.</param>
/// <param name="Repeat">How well a reading repeats, as a standard uncertainty in mm; counts only while too few readings check each other.</param>
/// <param name="Warmth">Doubt of length by warmth, as a share.</param>
public sealed record PieceDoubt(Calliper Calliper, double Repeat, double Warmth)
{
    /// <summary>Degrees of freedom of a repeatability that is stated to a quarter of itself (JCGM 100:2008, equation G.3).</summary>
    internal const int StatedDegrees = 8;

    internal double StandardOf(int unknown) => Math.Max(1e-9, unknown switch
    {
        PieceModel.Zero => Calliper.Zero.Standard,
        PieceModel.Jaws => Calliper.InsideJaws.Standard,
        _ => Uncertain.Combine(Calliper.Scale.Standard, Warmth),
    });
}
