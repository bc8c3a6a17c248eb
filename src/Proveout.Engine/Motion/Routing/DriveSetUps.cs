using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>The states in which belts and motors are checked, in the order to do them.</summary>
internal static class DriveSetUps
{
    private const string Isolate = "Isolate, lock off and prove dead before you reach into the machine.";

    public static readonly SetUp Parts = new(
        "belts-parts", "Pulleys and belts in the hand", ["Lay pulleys, idlers and belts beside the drawing."], ["Set-screw keys slip: keep the other hand out of the way."], 60);

    public static readonly SetUp Look = new(
        "belts-look", "Belts fitted, machine isolated, axes in the middle", ["Move every axis to the middle of its travel, slowly.", "Keep the drawing of the belts in hand, seen from the same side."], [Isolate], 120);

    public static readonly SetUp Push = new(
        "belts-push",
        "Motor plugs out, axes moved by hand",
        ["Pull the plugs of all motors.", "Put a pen mark on each motor pulley and on its motor.", "Hold the other axes still while one is pushed."],
        [Isolate, "A motor that is pushed is a generator: pull its plug, and push slower than 50 mm/s.", "Fingers do not belong between belt and pulley, nor under a raised gantry: prop it."],
        180);

    public static readonly SetUp Outputs = new(
        "belts-outputs",
        "Belts off the motors, controller on, one output at a time",
        ["Take the belts off the motor pulleys, and prop what they held up.", "Plug the motors in with the power off.", "Set the lowest current that turns a motor."],
        ["Supplies are on: keep clear of the mains side, one person energises.", "Never plug or unplug a motor under power.", "A gantry without belts falls: prop it first."],
        300)
    {
        Phase = Phase.Live,
    };

    public static readonly SetUp Jog = new(
        "belts-jog",
        "Belts on, controller on, short moves from the middle",
        ["Start with every axis in the middle.", "Set low current and a speed below 10 mm/s.", "Keep one hand on the stop."],
        ["Supplies are on: keep clear of the mains side, one person energises.", "The machine may move another way than you expect: keep hands and hair out of it, eyes on it, one hand on the stop."],
        240)
    {
        Phase = Phase.Live,
    };

    public static readonly SetUp Use = new("belts-in-use", "What you saw in use", [], ["Stop the machine before you reach in."], 0) { Phase = Phase.InUse };

    public static readonly SetUp[] All = [Parts, Look, Push, Outputs, Jog, Use];
}
