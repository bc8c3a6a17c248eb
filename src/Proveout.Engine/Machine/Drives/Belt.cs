using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A toothed belt and its path.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Closed">True for a loop without ends.</param>
/// <param name="Pitch">Pitch of its teeth.</param>
/// <param name="Width">Its width.</param>
/// <param name="Teeth">The side that its teeth are on when it leaves its first point.</param>
/// <param name="Path">Its points in order.</param>
public sealed record Belt(string Name, bool Closed, Length Pitch, Length Width, BeltSide Teeth, ValueList<BeltPoint> Path)
{
    // Of a 2 mm curvilinear belt: pitch line 0.25 mm above the tooth root, teeth 0.75 mm, back 0.38 mm above the pitch line (from memory).
    private const double TipsOfPitch = 0.5;
    private const double BackOfPitch = 0.19;

    /// <summary>From the pitch line to the tips of its teeth, when the file gives it.</summary>
    public Length? ToTips { get; init; }

    /// <summary>From the pitch line to its back, when the file gives it.</summary>
    public Length? ToBack { get; init; }

    /// <summary>Length to leave at each end until tension is set.</summary>
    public Length? Tail { get; init; }

    /// <summary>The pull that it is set to; null when nobody said.</summary>
    public Force? Tension { get; init; }

    /// <summary>From the pitch line to the tips of its teeth, in millimetres.</summary>
    public double TipsMm => ToTips?.Millimeters ?? TipsOfPitch * Pitch.Millimeters;

    /// <summary>From the pitch line to its back, in millimetres.</summary>
    public double BackMm => ToBack?.Millimeters ?? BackOfPitch * Pitch.Millimeters;
}
