using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>What the thickness of a wall of one laid line says of the flow.</summary>
/// <param name="ThicknessMm">Thickness, with its causes.</param>
/// <param name="TargetMm">Thickness that the line was to have.</param>
/// <param name="LayerMm">Height of a layer.</param>
/// <param name="OddPlace">Index of a reading that does not belong to the others, such as at a seam; null when none.</param>
public sealed record WallFlow(UncertaintyBudget ThicknessMm, double TargetMm, double LayerMm, int? OddPlace)
{
    /// <summary>True when the wall surely has another thickness than it was to have.</summary>
    public bool IsReal => ThicknessMm.DiffersFrom(TargetMm);

    /// <summary>By how much to multiply the flow.</summary>
    public UncertaintyBudget Factor
    {
        get
        {
            var (wanted, found) = (Section(TargetMm), Section(ThicknessMm.Value));
            return ThicknessMm.Through(wanted / found, -wanted * LayerMm / (found * found));
        }
    }

    /// <summary>From readings at several places.</summary>
    /// <param name="readingsMm">What was read.</param>
    /// <param name="calliper">With which calliper.</param>
    /// <param name="targetMm">Thickness that the line was to have.</param>
    /// <param name="layerMm">Height of a layer.</param>
    public static WallFlow Of(IReadOnlyList<double> readingsMm, Calliper calliper, double targetMm, double layerMm)
    {
        ArgumentNullException.ThrowIfNull(readingsMm);
        ArgumentNullException.ThrowIfNull(calliper);
        ReadingSeries places = new([.. readingsMm.Select(reading => calliper.Corrected(reading, PieceGrip.Outside))], calliper.StepMm);
        return new(
            new(places.Mean, [places.MeanLine("places differ"), new("zero of the calliper", calliper.Zero.Standard), new("step of the display", calliper.StepMm / Math.Sqrt(12))]),
            targetMm, layerMm, Grubbs.Outlier(places.Values));
    }

    // A line laid between two layers: flat above and below, half round at both sides; mm².
    private double Section(double widthMm) => LayerMm * (widthMm - (LayerMm * (1 - (Math.PI / 4))));
}
