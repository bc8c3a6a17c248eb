using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A stepper motor: holds and turns when both windings carry their current.</summary>
/// <remarks>Bounds as shares of the current of the sound machine; from memory. With one winding only it hums and twitches.</remarks>
/// <param name="part">Its part.</param>
/// <param name="windings">Its windings, and the current of each in the sound machine.</param>
internal sealed class MotorLoad(Part part, IReadOnlyList<(LiveBranch Branch, double Amperes)> windings) : ILoad
{
    private const double CarriesFrom = 0.7;
    private const double SurelyNotTo = 0.3;
    private const double RestsTo = 0.05;

    public Part Part => part;

    public string Name => "";

    public string AtWork => "holds and turns";

    public string AtRest => "is free to turn by hand";

    public ReadingInterval Works(LiveView view) => Seen.All(windings.Select(winding => Carries(view, winding)));

    public ReadingInterval Rests(LiveView view) =>
        Seen.All(windings.Select(winding => Seen.Low(Share(view, winding), RestsTo, CarriesFrom)));

    /// <summary>Right when it neither hums nor twitches: both windings carry current, or none does because nothing is fed into any.</summary>
    public ReadingInterval IsQuiet(LiveView view)
    {
        var carrying = windings.Count(winding => Carries(view, winding) == Seen.Right);
        var dead = windings.Count(winding => Carries(view, winding) == Seen.Wrong);
        return carrying == windings.Count ? Seen.Right
            : carrying + dead < windings.Count ? Seen.CannotTell
            : dead < windings.Count ? Seen.Wrong
            : IsFed(view) ? Seen.CannotTell
            : Seen.Right;
    }

    /// <summary>Right when it turns the way of the sound machine; a motor that does not turn says nothing.</summary>
    public ReadingInterval TurnsTheRightWay(LiveView view)
    {
        if (Works(view) != Seen.Right)
            return Seen.CannotTell;
        var turned = windings.Count(winding => view.Solution.DcAmperes(winding.Branch.Index) * winding.Amperes < 0);
        return turned % 2 == 0 ? Seen.Right : Seen.Wrong;
    }

    private static ReadingInterval Carries(LiveView view, (LiveBranch Branch, double Amperes) winding) =>
        Seen.High(Share(view, winding), CarriesFrom, SurelyNotTo);

    private static double Share(LiveView view, (LiveBranch Branch, double Amperes) winding) =>
        Math.Abs(view.Solution.DcAmperes(winding.Branch.Index) / winding.Amperes);

    // A driver's output reverses its current as the motor steps, which the solution does not show: a winding between two of them may hum.
    private bool IsFed(LiveView view) => windings.Any(winding =>
        Math.Max(Math.Abs(view.Solution.DcVolts(winding.Branch.A)), Math.Abs(view.Solution.DcVolts(winding.Branch.B))) > 1);
}
