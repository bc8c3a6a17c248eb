namespace Proveout.Engine.Electrical;

/// <summary>A differential pair has a terminator at each end and nowhere else.</summary>
internal sealed class BusTerminated : IReviewRule
{
    public string Id => "bus-terminated";

    public string Words => "two terminators on each differential pair, one at each end";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from bus in DataBus.Of(context)
        where bus.Terminators.Count != 2
        let ohms = 1 / bus.Terminators.Sum(terminator => 1 / terminator.Ohms)
        select new Finding(
            Id,
            FindingSeverity.Warning,
            [.. bus.Parts],
            $"The pair between {PathWords.List(bus.Parts)} has {Count(bus)}: it reads {(bus.Terminators.Count == 0 ? "open" : ReviewContext.Number(ohms, 0) + " Ω")} instead of 60 Ω, and data fails now and then.",
            bus.Terminators.Count < 2 ? "Fit the terminator at both ends of the line." : "Take out all but the two at the ends of the line.",
            "ISO 11898-2")
        {
            Numbers = [new("terminators", bus.Terminators.Count, "")],
        };

    private static string Count(DataBus bus) => bus.Terminators.Count switch
    {
        0 => "no terminator",
        1 => $"one terminator, in {bus.Terminators[0].Part}",
        _ => $"{bus.Terminators.Count} terminators, in {PathWords.List([.. bus.Terminators.Select(terminator => terminator.Part)])}",
    };
}
