namespace Proveout.Engine.Machine;

/// <summary>What the trade disagrees on, so that the builder chooses; common practice on every side.</summary>
public static class ReviewQuestions
{
    /// <summary>Whether 0 V is bonded to protective earth.</summary>
    public const string ZeroVolt = "zero-volt";

    /// <summary>From which cross-section stranded ends in screw clamps want a ferrule.</summary>
    public const string Ferrules = "ferrules";

    /// <summary>How the emergency stop ends motion.</summary>
    public const string StopCategory = "stop-category";


    /// <summary>Every question.</summary>
    public static IReadOnlyList<ReviewQuestion> All { get; } =
    [
        new(ZeroVolt, "Whether 0 V is bonded to protective earth.",
        [
            new("either", "The design shows what was meant; one bond or none is accepted."),
            new("bonded", "PELV: a fault of a live lead to metal opens the fuse at once (IEC 60204-1 clause 6.4, 9.4.3.1)."),
            new("floating", "SELV: a first fault of the minus lead does no harm, and stays unseen."),
        ]),
        new(Ferrules, "On which stranded ends in screw clamps a ferrule is wanted.",
        [
            new("from-0.5-mm2", "Smaller ferrules are hard to get and hard to crimp."),
            new("all", "A strand that stands off bridges signals as well as power."),
            new("none", "Clamps with a pressure plate hold fine strands without."),
        ]),
        new(StopCategory, "How the emergency stop ends motion.",
        [
            new("0", "Energy is cut at once: IEC 60204-1 clause 9.2.2, stop category 0."),
            new("1", "Drives brake under power, then energy is cut: stop category 1, for axes that fall or run on."),
        ]),
    ];

    /// <summary>The question with a name.</summary>
    public static ReviewQuestion Of(string name) => All.First(question => question.Name == name);
}
