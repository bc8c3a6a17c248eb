using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Finds a build by what a person types.</summary>
/// <param name="journal">Keeps the builds.</param>
public sealed class BuildSearch(IJournal journal)
{
    private const int ShortestPrefix = 4;
    private const int MostShown = 5;

    /// <summary>The build with an identifier, with a serial number, or the only one whose identifier starts with the text.</summary>
    public async Task<Outcome<Build>> FindAsync(string text, CancellationToken cancellation)
    {
        var builds = await journal.ListBuildsAsync(cancellation);
        var wanted = text.Trim();
        Build[] found = [.. builds.Where(build => build.Id.ToString() == wanted || build.Serial == wanted)];
        if (found.Length == 0 && wanted.Length >= ShortestPrefix)
            found = [.. builds.Where(build => build.Id.ToString().StartsWith(wanted, StringComparison.OrdinalIgnoreCase))];
        return found.Length == 1 ? Outcome.Of(found[0]) : Outcome.Refused<Build>([found.Length == 0 ? None(wanted) : Several(wanted, found)]);
    }

    /// <summary>The builds whose serial number, builder or machine holds a text; all when it is empty.</summary>
    public static IEnumerable<Build> Matching(IReadOnlyList<Build> builds, string text)
    {
        var wanted = text.Trim();
        return wanted.Length == 0 ? builds : builds.Where(build => Holds(build, wanted));
    }

    internal static bool Holds(Build build, string wanted) =>
        build.Serial.Contains(wanted, StringComparison.OrdinalIgnoreCase)
        || build.Builder.Contains(wanted, StringComparison.OrdinalIgnoreCase)
        || build.MachineName.Contains(wanted, StringComparison.OrdinalIgnoreCase);

    private static Diagnostic None(string wanted) => new(
        "no-such-build",
        new SourcePlace("journal", 0, 0),
        $"No build has `{wanted}` as its identifier, the start of it (at least {ShortestPrefix} characters) or its serial number.",
        "`proveout builds` lists them all.");

    private static Diagnostic Several(string wanted, Build[] found) => new(
        "several-builds",
        new SourcePlace("journal", 0, 0),
        $"{found.Length} builds go by `{wanted}`: {string.Join("; ", found.Take(MostShown).Select(build => $"{build.Id} ({build.Serial}, {build.MachineName})"))}.",
        "Give the whole identifier of one.");
}
