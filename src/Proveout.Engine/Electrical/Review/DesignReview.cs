using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Reviews a design on paper against rules of standards and of common practice. It finds what it looks for, and proves nothing safe.</summary>
public static class DesignReview
{
    /// <summary>Every finding, worst first, then in the order of the rules.</summary>
    /// <param name="design">The machine; every reference in it resolves.</param>
    public static IReadOnlyList<Finding> Of(MachineDesign design)
    {
        var context = new ReviewContext(WiringNetworkBuilder.Build(design));
        return
        [
            .. ReviewRules.All
                .SelectMany(rule => design.Review.Off.FirstOrDefault(off => off.Rule == rule.Id) is { } off ? [SwitchedOff(rule, off)] : rule.Review(context))
                .OrderByDescending(finding => finding.Severity),
        ];
    }

    private static Finding SwitchedOff(IReviewRule rule, RuleOff off) => new(
        rule.Id,
        FindingSeverity.Note,
        [],
        $"Not reviewed, because the machine file switches it off: {rule.Words}. Reason given: {off.Reason}",
        "Switch the rule on again when the reason no longer holds.",
        "chosen by the builder");
}
