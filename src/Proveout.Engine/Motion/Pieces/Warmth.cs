namespace Proveout.Engine.Motion;

/// <summary>What warmth does to a length read with a calliper (lengths are those at 20 °C: ISO 1; the model is that of JCGM 100:2008, H.1).</summary>
/// <param name="PieceDegrees">Temperature of the piece, in °C.</param>
/// <param name="CalliperDegrees">Temperature of the calliper, in °C.</param>
/// <param name="PieceExpansion">Expansion of the piece, in 1/K.</param>
/// <param name="CalliperExpansion">Expansion of the calliper, in 1/K.</param>
public sealed record Warmth(Uncertain PieceDegrees, Uncertain CalliperDegrees, Uncertain PieceExpansion, Uncertain CalliperExpansion)
{
    /// <summary>Temperature at which lengths are stated, in °C (ISO 1).</summary>
    public const double ReferenceDegrees = 20;

    /// <summary>Expansion of a steel calliper, in 1/K (JCGM 100:2008, H.1.3.3).</summary>
    public static Uncertain SteelExpansion { get; } = Uncertain.Within(11.5e-6, 2e-6);

    /// <summary>Length at 20 °C over the length read, less 1, with its causes.</summary>
    public UncertaintyBudget Correction
    {
        get
        {
            var (piece, calliper) = (PieceDegrees.Value - ReferenceDegrees, CalliperDegrees.Value - ReferenceDegrees);
            return new(
                ((1 + (CalliperExpansion.Value * calliper)) / (1 + (PieceExpansion.Value * piece))) - 1,
                [
                    new("expansion of the piece", PieceExpansion.Standard, piece),
                    new("temperature of the piece", PieceDegrees.Standard, PieceExpansion.Value),
                    new("expansion of the calliper", CalliperExpansion.Standard, calliper),
                    new("temperature of the calliper", CalliperDegrees.Standard, CalliperExpansion.Value),
                ]);
        }
    }
}
