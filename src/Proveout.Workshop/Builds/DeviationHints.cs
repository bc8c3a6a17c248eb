using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Carries deviations from build to build of the same machine.</summary>
internal static class DeviationHints
{
    // More would bury the step; the page of all builds has them all.
    private const int MostAtOneStep = 6;

    /// <summary>What other builds noted at a check, or at what it touches, newest first.</summary>
    /// <param name="digest">The builds of the machine.</param>
    /// <param name="own">The build that comes to the check; its own notes are no hints.</param>
    /// <param name="design">The machine as it is now.</param>
    /// <param name="check">The check.</param>
    public static IReadOnlyList<DeviationHint> Of(MachineDigest digest, BuildDigest own, MachineDesign design, Check check)
    {
        var subjects = SubjectsOf(design, check);
        return
        [
            .. (from build in digest.Builds
                where build != own
                from note in build.Deviations
                where subjects.Contains(note.Subject.Trim())
                orderby note.When descending
                select (build, note))
                .Take(MostAtOneStep)
                .Select(found => Hint(digest, own, found.build, found.note)),
        ];
    }

    /// <summary>An answer in words, for the record of the build that gave it.</summary>
    public static string AnswerWords(DeviationAnswered answered) =>
        FormattableString.Invariant($"What build {answered.NotedIn} noted as its entry {answered.NotedAt} is {(answered.Holds ? "so here too" : "not so here")}.")
        + (answered.Note.Length > 0 ? $" {answered.Note}" : "");

    // In a changed revision the check may have gone and the part or wire have stayed: both count.
    private static HashSet<string> SubjectsOf(MachineDesign design, Check check) => new(
        [
            check.Id,
            .. check.Points.Select(point => point.Subject),
            .. check.Points.Select(point => $"{point.Subject}.{point.Place}"),
            .. design.Conductors
                .Where(conductor => check.Points.Any(point => IsAt(conductor.From, point) || IsAt(conductor.To, point)))
                .Select(conductor => conductor.Id),
        ],
        StringComparer.OrdinalIgnoreCase);

    private static bool IsAt(TerminalReference end, CheckPoint point) => end.Part == point.Subject && end.Terminal == point.Place;

    private static DeviationHint Hint(MachineDigest digest, BuildDigest own, BuildDigest noted, JournalNote note)
    {
        var entry = (noted.Build.Id, (int)note.Sequence);
        var answers = digest.Builds.Where(build => build != noted).Select(build => build.Answers.GetValueOrDefault(entry)).OfType<DeviationAnswered>().ToArray();
        return new DeviationHint(
            noted.Build.Id.ToString(),
            noted.Build.Serial,
            note,
            [.. noted.Photos.Where(photo => string.Equals(photo.Subject.Trim(), note.Subject.Trim(), StringComparison.OrdinalIgnoreCase))],
            answers.Count(answer => answer.Holds),
            answers.Count(answer => !answer.Holds),
            own.Answers.GetValueOrDefault(entry)?.Holds,
            noted.Build.MachineFingerprint != own.Build.MachineFingerprint);
    }
}
