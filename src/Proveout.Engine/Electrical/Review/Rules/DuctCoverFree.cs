using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The cover of each duct can be put on and taken off: no part stands over its wall, or beside it higher than it.</summary>
internal sealed class DuctCoverFree : IReviewRule
{
    // What a cover and the fingers that press it on need beside the wall: common practice.
    private const double GapMm = 3;

    public string Id => "duct-cover-free";

    public string Words => "covers of ducts that can be closed, parts beside them considered";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from route in context.Design.Routes
        where route.Kind == RouteKind.Duct && route.Inside is not null && route.LiesOnSurface
        from placed in context.Layout.Placed
        where placed.Surface.Name == route.On && placed.Carrier is null
        let room = context.Layout.RoomOf(route).ToArray()
        let sitsIn = room.Any(leg => leg.Overlaps(placed.Outline))
        where sitsIn || (IsHigher(placed.Part, route) && room.Any(leg => leg.Grown(GapMm).Overlaps(placed.Outline)))
        select new Finding(
            Id,
            sitsIn ? FindingSeverity.Error : FindingSeverity.Warning,
            [route.Name, placed.Part.Designation],
            sitsIn
                ? $"{placed.Part.Designation} ({placed.Part.Name}) and {route.Name} take the same room: the duct cannot be fitted there."
                : $"{placed.Part.Designation} ({placed.Part.Name}) stands less than {ReviewContext.Number(GapMm)} mm beside {route.Name} and higher than it: the cover cannot be closed.",
            "Move the part or the duct, or take a narrower duct.",
            "common practice");

    private static bool IsHigher(Part part, Route route) => part.Size?.Depth?.Millimeters > route.Inside!.Value.Height.Millimeters;
}
