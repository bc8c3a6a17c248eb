using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What became of resonances, in words.</summary>
internal static class ChangeWords
{
    public static ModeChangeView Of(string axis, ModeChange change)
    {
        if (change.Before is null)
            return new("new", "cannot-tell", null, Text($"Axis {axis}: a resonance at {Hertz(change.After!)} is new."));
        if (change.After is null)
            return new("gone", "cannot-tell", null, Text($"Axis {axis}: the resonance at {Hertz(change.Before)} is gone: nothing stands out there any more."));
        var rise = change.Rise!.Value;
        var place = Math.Abs(rise.Value) <= rise.Expanded ? "same" : rise.Value > 0 ? "higher" : "lower";
        var strength = change.Growth is not { } growth || growth.Expanded > 0.9 * growth.Value ? "cannot-tell"
            : Math.Abs(growth.Value - 1) <= growth.Expanded ? "same"
            : growth.Value > 1 ? "grown" : "shrunk";
        var moved = place == "same"
            ? Text($"stayed where it was within what can be told (apart by {SensibleDigits.Of(rise with { Value = Math.Abs(rise.Value) }, "Hz")})")
            : Text($"moved {(place == "higher" ? "up" : "down")} by {SensibleDigits.Of(rise with { Value = Math.Abs(rise.Value) }, "Hz")}");
        var grew = strength switch
        {
            "same" => "is as strong as it was within what can be told",
            "cannot-tell" => "whether it grew cannot be told",
            _ => Text($"has {strength} to {SensibleDigits.Of(change.Growth!.Value, "")} times its acceleration, if the machine was excited alike"),
        };
        return new(place, strength, new(rise.Value, rise.Expanded, SensibleDigits.Of(rise, "Hz")), $"Axis {axis}: the resonance at {Hertz(change.Before)} {moved}; {grew}.{Damping(change)}{Hint(place, strength)}");
    }

    private static string Damping(ModeChange change) => change.DampingRise is { } rise && Math.Abs(rise.Value) > rise.Expanded
        ? Text($" Its damping ratio {(rise.Value > 0 ? "rose" : "fell")} by {SensibleDigits.Of(rise with { Value = Math.Abs(rise.Value) }, "")}.")
        : "";

    // Shared trade facts, A16: loose frame screws show as resonance.
    private static string Hint(string place, string strength) => place == "lower" || strength == "grown"
        ? " If nothing heavier was fitted, something became softer: see screws of frame and gantry, belts, and the sensor's own fixing."
        : "";

    private static string Hertz(VibrationMode mode) => SensibleDigits.Of(mode.Hertz, "Hz");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
