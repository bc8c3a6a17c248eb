using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>What a person sees at a frame and gantry, as checks with two outcomes: 1 as it should be, 0 not.</summary>
public static class FrameSymptoms
{
    internal const string SetUpId = "frame-in-use";
    internal const int Skew = FrameCheck.RailRise + 1;
    internal const int Touch = Skew + 1;
    internal const int Bind = Skew + 2;
    internal const int MapTwist = Skew + 3;
    internal const int Wave = Skew + 4;

    internal static readonly SetUp InUse = new(SetUpId, "What you saw in use", [], ["Stop the machine and pull the plug before you reach in."], 0) { Phase = Phase.InUse };

    /// <summary>What can be asked.</summary>
    public static IReadOnlyList<SeenQuestion> Questions { get; } =
    [
        Ask("seen-skew", "Do squares come out square?", "squares come out square", "squares come out as rhombs"),
        Ask("seen-touch", "Pushed to its stops by hand, does the gantry touch both at once?", "the gantry touches both stops at once", "the gantry touches one stop first"),
        Ask("seen-bind", "Pushed by hand, does the gantry run evenly over its whole travel?", "the gantry runs evenly by hand", "the gantry binds, or goes heavy at a place"),
        Ask("seen-map-twist", "Levelled, does the plate map show no twist?", "the levelled plate map shows no twist", "the levelled plate map is twisted"),
        Ask("seen-wave", "Along a rail, does the nozzle keep its height over the plate?", "the nozzle keeps its height along the rail", "the nozzle is high or low between the rail's ends"),
    ];

    internal static IEnumerable<Check> Checks => Questions.Select(question => new Check(
        question.CheckId, Symptom.Kind, SetUpId, question.Question, question.Instruction, [], "", new ReadingInterval(1, 1), "It is so in a frame that is square, flat and straight.", 5));

    private static SeenQuestion Ask(string id, string question, string good, string bad) => new(id, question, [new(1, good), new(0, bad)]);
}
