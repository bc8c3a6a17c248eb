using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What to mind with a force that came from a note.</summary>
internal static class SoundingRemarks
{
    // Above this B the limp formula reads more than a percent high.
    private const double NoticeableStiffness = 0.01;

    public static IEnumerable<string> Of(MeasuredBelt belt)
    {
        foreach (var note in belt.Note.Recording?.Notes ?? [])
            yield return note;
        foreach (var doubt in belt.Note.Pitch?.Doubts ?? [])
            yield return doubt;
        if (belt.Span is not { } span || belt.Force is not { } force)
            yield break;
        if (span.Mass.IsGuessed)
            yield return "The belt's mass is a guess by its width. Weigh a metre of it to halve the uncertainty or better; a comparison of two belts does not need it.";
        if (force.Value <= 0)
            yield return "No force is left after the bending stiffness is taken off: the stiffness, the length or the note is wrong.";
        if (span.Stiffness is Stiffness.Unknown)
            yield return "The stiffness of the belt is not known, so the force may read high, the more the shorter and slacker the span: by some percent below 150 mm.";
        if (span.Stiffness is Stiffness.Heard { Inharmonicity.Value: > NoticeableStiffness } heard)
            yield return string.Create(CultureInfo.InvariantCulture, $"The partials show a stiff span; {100 * heard.Inharmonicity.Value / (1 + heard.Inharmonicity.Value):0} % were taken off the force for it.");
    }
}
