using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>What a person sees in use when belts or motors are wrong, as numbered outcomes.</summary>
internal sealed class MoveSymptoms(MotionDesign motion, DriveMotion designed)
{
    private const double Nothing = 0.05;
    private const double Diagonal = 0.3;

    private readonly MoveChecks _moves = new(motion, designed);

    /// <summary>1 as commanded, 2 the other way, 3 another axis instead, 4 aslant, 5 as commanded but too short or too long.</summary>
    private static int OutcomeOf(double[] moves, int commanded)
    {
        var others = moves.Where((_, axis) => axis != commanded).Select(Math.Abs).DefaultIfEmpty().Max();
        var own = moves[commanded];
        return Math.Abs(own) < Nothing ? 3
            : others > Diagonal * Math.Abs(own) ? 4
            : own < 0 ? 2
            : Math.Abs(own - 1) > Nothing ? 5 : 1;
    }

    public IEnumerable<DriveCheck> All()
    {
        foreach (var (index, axis) in motion.Axes.Index().Where(axis => Enumerable.Range(0, designed.Motors.Count).Any(motor => designed.TurnsPerMm(motor, axis.Index) is not (null or 0))))
        {
            yield return new(
                $"seen-way:{axis.Name}", Symptom.Kind, DriveSetUps.Use, $"Where {axis.Name} goes when it is commanded",
                $"When {axis.Name} alone is commanded, what moves? 1 it, as far as it should; 2 it, the other way; 3 another axis instead; 4 aslant; 5 it, too short or too far.",
                "", "Two motors and two belts decide it together.", 5,
                state => _moves.Moves(state, index) is { } moves ? DriveCheck.Exactly(OutcomeOf(moves, index)) : ReadingInterval.Anything);
            yield return new(
                $"seen-bind:{axis.Name}", Symptom.Kind, DriveSetUps.Use, $"Whether {axis.Name} binds",
                $"Pushed by hand with the machine off and the motor plugs out, does {axis.Name} alone run freely to both stops? 1 yes; 2 it binds on the way.",
                "", "A belt whose path grows longer stops it.", 5, state => Binds(state, axis));
        }

        foreach (var belt in motion.Belts)
            yield return new(
                $"seen-ripple:{belt.Name}", Symptom.Kind, DriveSetUps.Use, $"A hum in step with the teeth of {belt.Name}",
                $"Is there a hum, or a fine pattern, of one tooth of {belt.Name}? 1 no; 2 yes.",
                "", "Teeth that roll over a smooth idler lift the belt tooth by tooth.", 5,
                state => BeltPath.At(state.Built.Motion, state.Built.Motion.Belts.First(other => other.Name == belt.Name), state.Middle)!.Contacts
                    .Any(contact => contact is { TeethTouch: true, Pulley.Kind: PulleyKind.Smooth }) ? new(1, 2) : DriveCheck.Exactly(1));
    }

    private static ReadingInterval Binds(DriveState state, Axis axis)
    {
        var (least, most) = state.FreeWay(axis.Name);
        var half = (axis.High - axis.Low).Millimeters / 2;
        return state.Built.Slack.Length > 0 ? ReadingInterval.Anything
            : most < half - HandTolerances.WayMm ? DriveCheck.Exactly(2)
            : least >= half ? DriveCheck.Exactly(1)
            : ReadingInterval.Anything;
    }
}
