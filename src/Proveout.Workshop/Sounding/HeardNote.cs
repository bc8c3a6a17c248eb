using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>A note, heard or typed.</summary>
/// <param name="Hertz">Its frequency.</param>
/// <param name="Recording">Where it was heard; null when it was typed.</param>
/// <param name="Pitch">What was found there.</param>
internal sealed record HeardNote(Uncertain Hertz, Recording? Recording, PluckedPitch? Pitch)
{
    // With two partials the stiffness is no more than a guess.
    private const int FewestPartials = 3;

    /// <summary>The stiffness that the partials tell; unknown when they are too few.</summary>
    public Stiffness Stiffness => Pitch is { } pitch && pitch.Partials.Count >= FewestPartials
        ? new Stiffness.Heard(new(pitch.Inharmonicity, pitch.StandardInharmonicity))
        : new Stiffness.Unknown();
}
