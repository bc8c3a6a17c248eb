namespace Proveout.Engine.Faults;

/// <summary>Says what is proved of a plan, and how.</summary>
internal static class PlanProofWords
{
    /// <summary>What is proved and how, in sentences.</summary>
    public static string Of(PlanChoice choice) => choice.Checks.Count == 0
        ? "There is nothing to catch."
        : $"{Claim(choice)} {Way(choice.Size)}";

    private static string Claim(PlanChoice choice) => choice.Gap == 0
        ? "Proved: no other choice of the checks considered catches the same mistakes in less time, each check counted with its leads moved and each set-up once."
        : FormattableString.Invariant(
            $"Not proved to the last second: this choice takes {Math.Ceiling(choice.CostSeconds / 6) / 10:0.0} min, and none that catches the same mistakes takes less than {Math.Floor(choice.LowerBoundSeconds / 6) / 10:0.0} min, each check counted with its leads moved and each set-up once.");

    private static string Way(CoverSize size) => FormattableString.Invariant(
        $"{size.Candidates} checks catch something, {size.DifferentChecks} of them differ; {size.Decided} follow without a search")
        + (size.Parts == 0
            ? "."
            : FormattableString.Invariant($", {size.ChecksLeft} are left to it in {Parts(size.Parts)}, {Proved(size)}."));

    private static string Parts(int parts) => parts == 1 ? "one part" : FormattableString.Invariant($"{parts} independent parts");

    private static string Proved(CoverSize size) =>
        size.PartsProved == size.Parts ? "solved to the end" : FormattableString.Invariant($"of which {size.PartsProved} solved to the end");
}
