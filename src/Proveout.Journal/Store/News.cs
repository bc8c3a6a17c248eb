namespace Proveout.Journal.Store;

/// <summary>Finds the builds that have grown beyond what a reader knows. One that cannot be read hides none of the others.</summary>
internal static class News
{
    public static IReadOnlyList<BuildNews> Of(IJournalRows rows, IReadOnlyDictionary<Guid, int> known, int most) =>
    [
        .. rows.ListEnds()
            .Where(end => !known.TryGetValue(end.Build, out var before) || before < end.Entries)
            .Take(most)
            .ToList()
            .Select(end => OfBuild(rows, end.Build, known.GetValueOrDefault(end.Build), (int)end.Entries)),
    ];

    private static BuildNews OfBuild(IJournalRows rows, Guid id, int before, int recorded)
    {
        Build? build = null;
        try
        {
            build = rows.FindBuild(id)?.Decode();
            return new(id, build, [.. rows.Entries(id, before).Select(entry => entry.Decode())], recorded, build is null ? "The record of the build itself is missing." : "");
        }
        catch (JournalDamagedException damage)
        {
            return new(id, build, [], recorded, damage.Message);
        }
    }
}
