namespace Proveout.Workshop;

/// <summary>One stage of energising, for people.</summary>
/// <param name="Number">Place in the order, from 1.</param>
/// <param name="Title">A few words.</param>
/// <param name="IsMains">True when mains voltage is on.</param>
/// <param name="Cautions">What can hurt; before the instructions.</param>
/// <param name="Instructions">What to do.</param>
/// <param name="ExcludedBefore">How many mistakes that would do harm here an earlier check has excluded.</param>
/// <param name="Risks">Mistakes that would do harm here and that nothing before has surely excluded, worst first.</param>
/// <param name="Precautions">What to do against them.</param>
/// <param name="Checks">What to measure before going on.</param>
public sealed record StageView(
    int Number,
    string Title,
    bool IsMains,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Instructions,
    int ExcludedBefore,
    IReadOnlyList<StageRisk> Risks,
    IReadOnlyList<string> Precautions,
    IReadOnlyList<StageCheck> Checks);
