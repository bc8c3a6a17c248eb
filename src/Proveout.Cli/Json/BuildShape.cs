using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A build; times in universal time, ISO 8601.</summary>
internal sealed record BuildShape(string Format, string Id, string Serial, string Machine, string Builder, DateTimeOffset Started)
{
    public static BuildShape Of(BuildSummary build) =>
        new("proveout-build 1", build.Id, build.Serial, build.MachineName, build.Builder, build.Started);

    public static BuildShape Of(Build build) =>
        new("proveout-build 1", build.Id.ToString(), build.Serial, build.MachineName, build.Builder, build.Started);
}

/// <summary>The builds of a journal, newest first.</summary>
internal sealed record BuildsShape(string Format, IReadOnlyList<BuildShape> Builds);

/// <summary>Readings that a build with mistakes would show.</summary>
internal sealed record RehearsalShape(string Format, string Machine, IReadOnlyList<string> Mistakes, int Seed, IReadOnlyList<ReadingShape> Readings);

/// <summary>A reading as typed.</summary>
internal sealed record ReadingShape(string Check, string Text);

/// <summary>The files of a report.</summary>
internal sealed record ReportShape(string Format, string Build, IReadOnlyList<string> Files);
