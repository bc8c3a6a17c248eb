using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>One stage of energising a machine: what is let in, what is tried, what is measured before the next.</summary>
/// <param name="Number">Place in the order, from 1.</param>
/// <param name="Title">A few words.</param>
/// <param name="IsMains">True when mains voltage is on.</param>
/// <param name="Cautions">What can hurt, a sentence each; shown before the instructions.</param>
/// <param name="Instructions">What to do, a sentence each.</param>
/// <param name="Residuals">Mistakes that could do harm here and that nothing before has surely excluded, worst first.</param>
/// <param name="Precautions">What to do against them, a sentence each.</param>
/// <param name="Checks">What to measure before going on.</param>
/// <param name="ExcludedBefore">How many mistakes that would do harm here have been excluded by an earlier check.</param>
public sealed record EnergisingStage(
    int Number,
    string Title,
    bool IsMains,
    ValueList<string> Cautions,
    ValueList<string> Instructions,
    ValueList<ResidualRisk> Residuals,
    ValueList<string> Precautions,
    ValueList<LiveCheck> Checks,
    int ExcludedBefore);
