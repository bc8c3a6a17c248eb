using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>A kind of mistake with belts, pulleys or motor plugs.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Prior">How likely a careful builder makes each such mistake: assumed, to be learned from records.</param>
/// <param name="Severity">What it does at the first move.</param>
/// <param name="Consequence">The same in a sentence.</param>
/// <param name="OtherEvidence">What else shows it.</param>
internal sealed record DriveMistakeKind(string Name, double Prior, Severity Severity, string Consequence, string OtherEvidence)
{
    public static readonly DriveMistakeKind WrongSide = new(
        "belt-wrong-side", 0.008, Severity.DoesNotWork, "The belt's length changes along the travel: the axis binds, or moves aslant.", "Compare each bend with the drawing.");

    public static readonly DriveMistakeKind IdlersExchanged = new(
        "idlers-exchanged", 0.004, Severity.DoesNotWork, "The belt crosses itself or another, binds and wears.", "Compare the order of pulleys with the drawing.");

    public static readonly DriveMistakeKind TurnedOver = new(
        "belt-turned-over", 0.006, Severity.DoesNotWork, "The smooth back lies on the motor's teeth: the motor slips and positions are lost.", "Feel which side has teeth.");

    public static readonly DriveMistakeKind WrongAnchor = new(
        "wrong-anchor", 0.006, Severity.DoesNotWork, "The belt pulls at the wrong place: it slopes, binds, or moves another axis.", "Follow each end to its clamp.");

    public static readonly DriveMistakeKind WrongPlane = new(
        "wrong-plane", 0.006, Severity.DoesNotWork, "The belt slopes, climbs a rim, rubs and sheds dust.", "Lay a rule along the belt beside the rail.");

    public static readonly DriveMistakeKind PlugsExchanged = new(
        "plugs-exchanged", 0.01, Severity.Damage, "Another axis moves than commanded and drives into its stop.", "Compare labels at both ends of the cable.");

    public static readonly DriveMistakeKind CoilReversed = new(
        "coil-reversed", 0.02, Severity.Damage, "The motor turns the other way: the axis drives into its stop, or fights its sisters.", "None before the motor turns.");

    public static readonly DriveMistakeKind WrongTeeth = new(
        "wrong-teeth", 0.004, Severity.DoesNotWork, "Everything on the axis comes out too short or too long by the ratio of the teeth.", "Count teeth, or measure a move of 100 mm.");

    public static readonly DriveMistakeKind Slack = new(
        "slack-belt", 0.02, Severity.DoesNotWork, "Backlash and jumped teeth.", "Pluck it and hear the note.");
}
