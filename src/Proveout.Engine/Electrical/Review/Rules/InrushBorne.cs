using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Switching on does not weld a contact, overload an output or overheat a conductor: the peak of some milliseconds against what lies before it.</summary>
/// <remarks>Terminals that say no peak are taken to bear it: contacts of plugs and screws bear many times their rating for so short a time.</remarks>
internal sealed class InrushBorne : IReviewRule
{
    // A peak is over within half a cycle of the mains: common practice.
    private const double Seconds = 0.01;

    public string Id => "inrush-borne";

    public string Words => "peak current at switching on against outputs, contacts and conductors before it";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var peaks = InrushPeak.Of(context).ToArray();
        var through = peaks.SelectMany(peak => peak.Way.Select(element => (element, peak))).ToLookup(step => step.element, step => step.peak);
        var nodes = through
            .SelectMany(group => new[] { group.Key.A, group.Key.B }.SelectMany(node => group.Select(peak => (node, peak))))
            .Distinct()
            .ToLookup(at => at.node, at => at.peak);
        foreach (var at in nodes.OrderBy(group => group.Key))
            if (context.TerminalAt(at.Key)?.Peak?.Amperes is { } most && at.Sum(peak => peak.Amperes) is var amperes && amperes > most)
                yield return Found(context.Wiring.Nodes[at.Key].ToString()!, context.Wiring.Nodes[at.Key].Subject, [.. at], amperes, most);
        foreach (var group in through.Where(group => group.Key.Kind == ElementKind.Copper))
            if (context.FindConductor(group.Key.Subject) is { } conductor && group.Sum(peak => peak.Amperes) is var amperes && amperes > Bears(conductor))
                yield return Found(conductor.Id, conductor.Id, [.. group], amperes, Bears(conductor));
    }

    // A half-wave of a sine carries half of its peak's square.
    private static double Bears(Conductor conductor) => Adiabatic.PvcCore * conductor.CrossSection.SquareMillimeters / Math.Sqrt(Seconds / 2);

    private Finding Found(string place, string subject, InrushPeak[] peaks, double amperes, double most)
    {
        string[] parts = [.. peaks.Select(peak => peak.Part)];
        return new(
            Id,
            FindingSeverity.Warning,
            [subject, .. parts],
            $"{PathWords.List(parts)} {(parts.Length == 1 ? "draws" : "together draw")} {ReviewContext.Number(amperes)} A for some milliseconds when switched on; {place} bears {ReviewContext.Number(most)} A.",
            "Limit the peak, take a part or conductor that bears it, or switch the parts on one after the other.",
            "ratings from the part types; IEC 60364-4-43 clause 434.5.2 for conductors")
        {
            Numbers = [new("peak", amperes, "A"), new("bears", most, "A")],
        };
    }
}
