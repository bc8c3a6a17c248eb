namespace Proveout.Engine.Electrical;

/// <summary>A conductor whose length is given is no shorter than its way.</summary>
/// <remarks>A note only: a way is taken level and upright between its corners, and a wire may cut them.</remarks>
internal sealed class LengthSuffices : IReviewRule
{
    public string Id => "length-suffices";

    public string Words => "conductors no shorter than their way";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from way in context.Layout.Ways
        let given = way.Conductor.Length.Millimeters
        where way.IsLongerThanGiven
        select new Finding(
            Id,
            FindingSeverity.Note,
            [way.Conductor.Id],
            $"{way.Conductor.Id} from {way.Conductor.From} to {way.Conductor.To} is {ReviewContext.Number(given, 0)} mm long, and its way is {ReviewContext.Number(Math.Ceiling(way.WayMm), 0)} mm before any slack.",
            $"Measure before you cut, or leave its length out: then it is {ReviewContext.Number(way.CutMm, 0)} mm.",
            "common practice")
        {
            Numbers = [new("length", given, "mm"), new("way", way.WayMm, "mm")],
        };
}
