namespace Proveout.Engine.Electrical;

/// <summary>A contact, output or junction with the current that it bears.</summary>
/// <param name="Branch">Its branch.</param>
/// <param name="Name">What it is called.</param>
/// <param name="LimitAmperes">Current that it bears.</param>
internal sealed record LiveRated(LiveBranch Branch, string Name, double LimitAmperes)
{
    // A junction at a terminal without a rating, such as the clamp of an input, bears some 20 mA; from memory.
    private const double ClampAmperes = 0.02;

    public static IEnumerable<LiveRated> Of(LiveModel model)
    {
        foreach (var branch in model.Circuit.Branches)
        {
            if (branch.Kind is not (LiveBranchKind.Contact or LiveBranchKind.Switch or LiveBranchKind.Junction)
                || model.Context.Design.FindPart(branch.Subject) is not { } part || branch.Element is not { } element)
                continue;
            var rated = new[] { element.A, element.B }
                .Select(part.Type.FindTerminal)
                .Where(terminal => terminal is not null)
                .Select(terminal => terminal!.Current?.Amperes)
                .ToList();
            var limit = rated.Where(amperes => amperes is not null).Select(amperes => amperes!.Value).DefaultIfEmpty(0).Max();
            if (limit == 0 && branch.Kind == LiveBranchKind.Junction)
                limit = rated.Count > 0 ? ClampAmperes : double.PositiveInfinity;
            if (limit > 0 && !double.IsPositiveInfinity(limit))
                yield return new(branch, $"{branch.Subject}.{branch.Name}", limit);
        }
    }
}
