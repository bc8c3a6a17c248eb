using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Rows of the tables of belts and motors, in words.</summary>
public static class BeltWords
{
    /// <summary>Name, path, whether it stays, cut, trim, bends.</summary>
    public static string[] Of(BeltRow belt)
    {
        ArgumentNullException.ThrowIfNull(belt);
        return
        [
            belt.Name,
            !double.IsFinite(belt.LongestMm) ? "no room" : belt.IsConstant ? Text($"{belt.LongestMm:0.0} mm") : Text($"{belt.ShortestMm:0.0} to {belt.LongestMm:0.0} mm"),
            belt.IsConstant ? "yes" : "no",
            !double.IsFinite(belt.CutMm) ? "" : belt.IsClosed ? Text($"loop of {belt.Teeth} teeth") : Text($"{belt.CutMm:0.#} mm, {belt.Teeth} teeth"),
            belt.TrimMm > 0 ? Text($"{belt.TrimMm:0.#} mm") : "nothing",
            string.Join("; ", belt.Bends.Select(Of)),
        ];
    }

    /// <summary>A bend: pulley, way, side, wrap, mesh.</summary>
    public static string Of(BendRow bend)
    {
        ArgumentNullException.ThrowIfNull(bend);
        return Text($"{bend.Pulley} to the {bend.Turn}, {bend.Side} touch{(bend.Side == "back" ? "es" : "")}, {bend.WrapDegrees:0}°{(bend.TeethInMesh > 0 ? Text($", {Math.Floor(10 * bend.TeethInMesh) / 10:0.0} teeth in mesh") : "")}");
    }

    /// <summary>Motor, axis, turns for a millimetre, millimetres for a turn, for a full step.</summary>
    public static string[] Of(MotorRow motor, MotorShare share)
    {
        ArgumentNullException.ThrowIfNull(motor);
        ArgumentNullException.ThrowIfNull(share);
        return
        [
            motor.Motor,
            share.Axis,
            Text($"{share.TurnsPerMm:+0.00000;-0.00000}"),
            motor.IsTied ? "only with the others" : Text($"{share.MmPerTurn:+0.000;-0.000}"),
            Text($"{share.MmPerFullStep:0.0000}"),
        ];
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
