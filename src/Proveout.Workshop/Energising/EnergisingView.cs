namespace Proveout.Workshop;

/// <summary>The order in which a machine is energised for the first time, for people.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Stages">The stages in their order.</param>
public sealed record EnergisingView(MachineSummary Machine, IReadOnlyList<StageView> Stages)
{
    /// <summary>What it rests on, in a sentence.</summary>
    public static string Premise =>
        "This order holds only after every check of the dead plan has passed on this very machine. It says which harm those checks exclude and which they do not; it never says that a machine is safe.";
}
