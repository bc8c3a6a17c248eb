namespace Proveout.Engine.Electrical;

/// <summary>Every conductor can be told by its label at both ends.</summary>
internal sealed class ConductorLabelled : IReviewRule
{
    public string Id => "conductor-labelled";

    public string Words => "a label on every conductor";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        string[] without = [.. context.Design.Conductors.Where(conductor => !conductor.Make.Labelled).Select(conductor => conductor.Id)];
        if (without.Length > 0)
            yield return new Finding(
                Id,
                FindingSeverity.Warning,
                [.. without],
                $"{PathWords.List(without)} {(without.Length == 1 ? "carries" : "carry")} no label: after the first repair nobody knows where {(without.Length == 1 ? "it belongs" : "they belong")}.",
                "Put the identifier on both ends.",
                "IEC 60204-1 clause 13.2.1");
    }
}
