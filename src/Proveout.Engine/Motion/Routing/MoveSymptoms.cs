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

    /// <summary>What can be asked of an axis or a belt.</summary>
    public IEnumerable<SeenQuestion> Questions()
    {
        foreach (var (_, axis) in Driven())
        {
            yield return Way(axis);
            yield return Bind(axis);
        }

        foreach (var belt in motion.Belts)
            yield return Ripple(belt);
    }

    public IEnumerable<DriveCheck> All()
    {
        foreach (var (index, axis) in Driven())
        {
            yield return Check(
                Way(axis), $"Where {axis.Name} goes when it is commanded", "Two motors and two belts decide it together.",
                state => _moves.Moves(state, index) is { } moves ? DriveCheck.Exactly(OutcomeOf(moves, index)) : ReadingInterval.Anything);
            yield return Check(Bind(axis), $"Whether {axis.Name} binds", "A belt whose path grows longer stops it.", state => Binds(state, axis));
        }

        foreach (var belt in motion.Belts)
            yield return Check(
                Ripple(belt), $"A hum in step with the teeth of {belt.Name}", "Teeth that roll over a smooth idler lift the belt tooth by tooth.",
                state => BeltPath.At(state.Built.Motion, state.Built.Motion.Belts.First(other => other.Name == belt.Name), state.Middle)!.Contacts
                    .Any(contact => contact is { TeethTouch: true, Pulley.Kind: PulleyKind.Smooth }) ? new(1, 2) : DriveCheck.Exactly(1));
    }

    private static DriveCheck Check(SeenQuestion question, string title, string why, Func<DriveState, ReadingInterval> shown) =>
        new(question.CheckId, Symptom.Kind, DriveSetUps.Use, title, question.Instruction, "", why, 5, shown);

    private IEnumerable<(int Index, Axis Axis)> Driven() =>
        motion.Axes.Index().Where(axis => Enumerable.Range(0, designed.Motors.Count).Any(motor => designed.TurnsPerMm(motor, axis.Index) is not (null or 0)));

    private static SeenQuestion Way(Axis axis) => new(
        $"seen-way:{axis.Name}",
        $"When {axis.Name} alone is commanded, what moves?",
        [
            new(1, $"{axis.Name} goes where it is told, as far as it should"), new(2, $"{axis.Name} goes the other way"), new(3, $"another axis moves instead of {axis.Name}"),
            new(4, $"{axis.Name} goes aslant"), new(5, $"{axis.Name} goes too short or too far"),
        ]);

    private static SeenQuestion Bind(Axis axis) => new(
        $"seen-bind:{axis.Name}",
        $"Pushed by hand with the machine off and the motor plugs out, does {axis.Name} alone run freely to both stops?",
        [new(1, $"{axis.Name} runs freely by hand to both stops"), new(2, $"{axis.Name} binds on its way by hand")]);

    private static SeenQuestion Ripple(Belt belt) => new(
        $"seen-ripple:{belt.Name}",
        $"Is there a hum, or a fine pattern, of one tooth of {belt.Name}?",
        [new(1, $"no hum or pattern of the teeth of {belt.Name}"), new(2, $"a hum or a fine pattern of the teeth of {belt.Name}")]);

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
