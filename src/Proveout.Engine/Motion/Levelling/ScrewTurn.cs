using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>A move of a screw in words.</summary>
public static class ScrewTurn
{
    /// <summary>Turns of a screw for a move; clockwise is positive, seen from the side at which the hand turns.</summary>
    /// <param name="raiseMillimetres">By how much the plate shall rise.</param>
    /// <param name="pitchMillimetres">Pitch of the screw.</param>
    /// <param name="clockwiseRaises">True when a clockwise turn raises the plate.</param>
    public static double Turns(double raiseMillimetres, double pitchMillimetres, bool clockwiseRaises) =>
        raiseMillimetres / pitchMillimetres * (clockwiseRaises ? 1 : -1);

    /// <summary>Such as <c>a quarter turn clockwise (92°)</c>.</summary>
    public static string Words(double turns)
    {
        var degrees = Math.Abs(turns) * 360;
        var direction = turns > 0 ? "clockwise" : "anticlockwise";
        var eighths = (int)Math.Round(Math.Abs(turns) * 8);
        var amount = eighths switch
        {
            0 => string.Create(CultureInfo.InvariantCulture, $"{degrees:0}°"),
            1 => "an eighth of a turn",
            2 => "a quarter turn",
            4 => "half a turn",
            8 => "one turn",
            < 8 => $"{eighths} eighths of a turn",
            _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(turns):0.##} turns"),
        };
        return eighths is 0 or > 8 ? $"{amount} {direction}" : string.Create(CultureInfo.InvariantCulture, $"about {amount} {direction} ({degrees:0}°)");
    }
}
