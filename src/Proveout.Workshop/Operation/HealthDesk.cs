using System.Globalization;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>The health of a journal and of the disk that it is on.</summary>
/// <param name="journal">The journal.</param>
/// <param name="file">Its file; null when it is kept somewhere else than in a file of this computer.</param>
/// <param name="clock">Measures how long the journal takes to answer.</param>
/// <param name="freeBytes">How many bytes are free at a path; asks the system when not given.</param>
/// <param name="patience">How long the journal may take to answer; 5 s when not given.</param>
public sealed class HealthDesk(IJournal journal, string? file, TimeProvider clock, Func<string, long>? freeBytes = null, TimeSpan? patience = null) : IHealthDesk
{
    // Our choice: five of the largest recordings that a form takes (20 MB each), so that nobody's work is refused halfway.
    private const long LeastFreeBytes = 100_000_000;

    // Our choice: longer than a journal under load takes (docs/methods/durability.md), shorter than who asks from outside waits.
    private static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(5);

    private readonly TimeSpan _patience = patience ?? UsualPatience;
    private readonly Lock _gate = new();
    private readonly Func<string, long> _freeBytes = freeBytes ?? (path => new DriveInfo(path).AvailableFreeSpace);
    private Task<BenchHealth>? _look;

    /// <inheritdoc/>
    public Task<BenchHealth> LookAsync(CancellationToken cancellation)
    {
        // However many ask, one looks: a journal that hangs is not made slower by them.
        lock (_gate)
            return (_look = _look is { IsCompleted: false } ? _look : LookAsync()).WaitAsync(cancellation);
    }

    private async Task<BenchHealth> LookAsync()
    {
        var reads = await TryAsync("journal-read", "The journal can be read.", "read", () => journal.FindBuildAsync(Guid.Empty)).ConfigureAwait(false);
        // A journal that cannot be read is not asked to write: the answer would be the same, after as long a wait again.
        var writes = reads.IsGood
            ? await TryAsync("journal-write", "The journal can be written.", "written", () => journal.ProbeAsync()).ConfigureAwait(false)
            : reads with { Name = "journal-write" };
        return new BenchHealth(ProgramVersion.Number, file is null ? [reads, writes] : [reads, writes, LookAtDisk(file)]);
    }

    // What an exception says may hold a path, so that it is told in words of our own.
    private async Task<HealthFinding> TryAsync(string name, string good, string verb, Func<Task> work)
    {
        try
        {
            // Asked first: a database that is opened where there is none is made anew.
            if (file is not null && !File.Exists(file))
                return new HealthFinding(name, false, "The file of the journal is gone.", "Stop the bench. If the file was moved, move it back with the files beside it; otherwise restore a copy: `proveout restore`.");
            await work().WaitAsync(_patience, clock).ConfigureAwait(false);
            return new HealthFinding(name, true, good, "");
        }
        catch (TimeoutException)
        {
            return new HealthFinding(
                name,
                false,
                string.Create(CultureInfo.InvariantCulture, $"The journal did not answer within {_patience.TotalSeconds:0.##} seconds."),
                "Look whether another program holds it, and whether its disk or its server is slow.");
        }
        catch (Exception failure) when (failure is JournalDamagedException or JournalFormatException)
        {
            return new HealthFinding(name, false, "The journal is damaged.", "Stop the bench, keep the journal's files as they are, and save what can be read with `proveout rescue`.");
        }
        catch (JournalException)
        {
            return new HealthFinding(
                name, false, $"The journal cannot be {verb}.", "Look whether its disk or server is there, has space and may be written to, and whether another program holds it.");
        }
    }

    private HealthFinding LookAtDisk(string path)
    {
        const string Name = "disk-space";
        try
        {
            var free = _freeBytes(Path.GetDirectoryName(Path.GetFullPath(path))!);
            var megabytes = string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(free / 1e6):0} MB are free on the disk of the journal");
            return free >= LeastFreeBytes
                ? new HealthFinding(Name, true, $"{megabytes}.", "")
                : new HealthFinding(Name, false, $"Only {megabytes}: photographs and recordings may be refused.", "Make space on the disk of the journal; 100 MB at least.");
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return new HealthFinding(Name, false, "The disk of the journal cannot be asked for its space.", "Look whether the disk is still there.");
        }
    }
}
