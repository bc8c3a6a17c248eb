using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Proves the belts of a machine, and plans how to find a belt that runs another way.</summary>
public static class BeltProof
{
    /// <summary>The view; null when the machine file says nothing of belts or screws that move an axis.</summary>
    public static BeltsView? Of(MachineSummary machine, MachineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var motion = design.Motion;
        if (!Moves(motion))
            return null;
        // Mistakes are imagined in a path that can be; what cannot be is a finding.
        var dictionary = motion.Belts.Any(belt => BeltLength.Of(motion, belt).Blocked) ? new([], [], [], []) : DriveCampaign.Of(motion);
        return new(
            machine,
            BeltRules.Review(motion),
            [.. motion.Belts.Select(belt => RowOf(motion, belt))],
            MotorsThatMove(motion),
            TableOf(dictionary),
            [.. AmbiguityGroup.Of(dictionary, Enumerable.Range(0, dictionary.Faults.Count)).Where(group => group.Faults.Count > 1).Select(group => (IReadOnlyList<string>)[.. group.Faults.Select(fault => dictionary.Faults[fault].Sentence)])],
            [.. motion.Axes.Select(axis => (axis.Name, axis.Low.Millimeters, axis.High.Millimeters))])
        {
            Dictionary = dictionary,
            Questions = dictionary.Checks.Count > 0 ? DriveCampaign.Questions(motion) : [],
        };
    }

    /// <summary>What was seen, or read at the hand checks, tells: mistakes that explain it, the likeliest first, and the check worth most now.</summary>
    /// <param name="view">The proof.</param>
    /// <param name="answers">Number of the outcome seen, or a reading, by the identifier of the check.</param>
    public static SeenView Explain(BeltsView view, IReadOnlyDictionary<string, double> answers)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(answers);
        // Where a path cannot be, its finding comes first and no mistake is imagined.
        return view.Questions.Count == 0 ? new([], [], [], 0, null, null) : SeenDiagnosis.Of(view.Dictionary, null, view.Questions, answers);
    }

    /// <summary>The outcomes that a person's words mean, and readings written as <c>check=value</c>.</summary>
    public static Outcome<IReadOnlyDictionary<string, double>> Answers(BeltsView view, IEnumerable<string> seen, IEnumerable<string> read)
    {
        ArgumentNullException.ThrowIfNull(view);
        return SeenWords.Read(view.Dictionary, view.Questions, seen, read);
    }

    /// <summary>True when something moves an axis.</summary>
    public static bool Moves(MotionDesign motion) => motion is { Axes.Count: > 0 } && motion.Belts.Count + motion.Screws.Count > 0;

    /// <summary>What each motor moves; none when nothing moves an axis.</summary>
    public static IReadOnlyList<MotorRow> MotorsThatMove(MotionDesign motion) => Moves(motion) ? [.. MotorsOf(motion)] : [];

    private static BeltRow RowOf(MotionDesign motion, Belt belt)
    {
        var length = BeltLength.Of(motion, belt);
        var cut = length.Blocked ? new BeltCut(double.NaN, double.NaN, 0, 0) : BeltCut.Of(length);
        return new(
            belt.Name, belt.Closed, length.ShortestMm, length.LongestMm, length.IsConstant, cut.CutMm, cut.Teeth, cut.TrimMm,
            BeltPath.At(motion, belt, AxisPlaces.Middle(motion)) is { } path ? [.. path.Contacts.Select(BendOf)] : []);
    }

    private static BendRow BendOf(BeltContact contact) => new(
        contact.Pulley.Name,
        contact.Turn is BeltTurn.Left ? "left" : "right",
        contact.TeethTouch ? "teeth" : "back",
        180 / Math.PI * contact.WrapRadians,
        contact.TeethInMesh);

    private static IEnumerable<MotorRow> MotorsOf(MotionDesign motion)
    {
        var drive = DriveMotion.Of(motion, AxisPlaces.Middle(motion));
        foreach (var (motor, name) in drive.Motors.Index())
            yield return new(
                name,
                drive.IsTied(motor),
                [
                    .. drive.Axes.Index()
                        .Where(axis => drive.TurnsPerMm(motor, axis.Index) is not (null or 0))
                        .Select(axis => ShareOf(axis.Item, drive.TurnsPerMm(motor, axis.Index)!.Value, drive.MmPerTurn(axis.Index, motor), FullSteps(motion, name))),
                ]);
    }

    private static MotorShare ShareOf(string axis, double turnsPerMm, double mmPerTurn, int fullSteps) => new(axis, turnsPerMm, mmPerTurn, 1 / (Math.Abs(turnsPerMm) * fullSteps));

    private static int FullSteps(MotionDesign motion, string motor) =>
        (motion.Pulleys.Select(pulley => pulley.Driven).FirstOrDefault(driven => driven?.Motor == motor) ?? motion.Screws.Select(screw => screw.Driven).First(driven => driven.Motor == motor)).FullSteps;

    private static MistakeTable TableOf(FaultDictionary dictionary) =>
        MistakeTables.Of(dictionary, CheckPlan.Of(dictionary, mayUse: check => !Symptom.Is(dictionary.Checks[check])), Expected);

    // A count is exact and reads better without digits after the point.
    private static string Expected(Check check) => check.Expectation switch
    {
        var (low, high) when low == high => string.Create(CultureInfo.InvariantCulture, $"{low:0} {check.Unit}"),
        { High: double.PositiveInfinity, Low: var low } => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(low):0} {check.Unit} or more"),
        _ => CheckWords.Expected(check),
    };
}
