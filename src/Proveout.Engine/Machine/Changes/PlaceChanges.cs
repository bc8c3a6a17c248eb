namespace Proveout.Engine.Machine;

/// <summary>What differs between the routes, surfaces and rails of two designs.</summary>
internal static class PlaceChanges
{
    public static IEnumerable<DesignChange> Between(MachineDesign before, MachineDesign after) =>
        Of(before.Routes, after.Routes, route => route.Name, route => $"{Word(route.Kind)} {route.Name}")
            .Concat(Of(before.Surfaces, after.Surfaces, surface => surface.Name, surface => $"surface {surface.Name}"))
            .Concat(Of(before.Rails, after.Rails, rail => rail.Name, rail => $"rail {rail.Name}"));

    private static IEnumerable<DesignChange> Of<T>(ValueList<T> before, ValueList<T> after, Func<T, string> nameOf, Func<T, string> called)
        where T : class
    {
        var (old, now) = (before.ToDictionary(nameOf, StringComparer.Ordinal), after.ToDictionary(nameOf, StringComparer.Ordinal));
        DesignChange Change(ChangeKind kind, T place, string what) =>
            new(kind, ChangeRank.Other, [nameOf(place)], $"{Capital.Of(called(place))} {what}");

        return before.Where(place => !now.ContainsKey(nameOf(place))).Select(place => Change(ChangeKind.PlaceRemoved, place, "is no longer there."))
            .Concat(after.Where(place => !old.ContainsKey(nameOf(place))).Select(place => Change(ChangeKind.PlaceAdded, place, "is new.")))
            .Concat(after
                .Where(place => old.TryGetValue(nameOf(place), out var was) && !was.Equals(place))
                .Select(place => Change(ChangeKind.PlaceChanged, place, "has another kind, size, way or note.")));
    }

    private static string Word(RouteKind kind) => kind.ToString().ToLowerInvariant();
}
