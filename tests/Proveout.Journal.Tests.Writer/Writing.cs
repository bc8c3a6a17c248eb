using System.Globalization;
using System.Text;
using Proveout.Journal.Trials.Disk;

namespace Proveout.Journal.Trials;

/// <summary>What the process writes.</summary>
internal static class Writing
{
    /// <summary>Begins the line that acknowledges a backup.</summary>
    public const string BackupMark = "backup ";

    private const int PhotoEvery = 4;

    /// <summary>Appends, and says each entry once it is acknowledged.</summary>
    public static async Task AppendAsync(IJournal journal, Guid build, string person, int count)
    {
        for (var number = 1; number <= count; number++)
            Console.WriteLine(Line(await journal.AppendAsync(build, Draft(person, number, 40_000))));
    }

    /// <summary>Many benches at once; each sends every entry twice, as a browser does whose answer was lost, and says what it was answered.</summary>
    public static async Task AtBenchesAsync(IJournal journal, string person, int benches, int entries)
    {
        var builds = await journal.ListBuildsAsync();
        var lines = await Task.WhenAll(Enumerable.Range(0, benches).Select(async bench =>
        {
            var said = new List<string>();
            for (var number = 1; number <= entries; number++)
            {
                var draft = Draft(string.Create(CultureInfo.InvariantCulture, $"{person}, bench {bench}"), number, 4_000);
                var sent = Enumerable.Range(0, 2).Select(_ => journal.AppendAsync(builds[bench % builds.Count].Id, draft));
                said.AddRange((await Task.WhenAll(sent)).Select(Line));
            }
            return said;
        }));
        foreach (var line in lines.SelectMany(line => line))
            Console.WriteLine(line);
    }

    /// <summary>Opens, appends, backs up and closes again and again, and notes in the log of the disk what was acknowledged when.</summary>
    public static async Task RecordAsync(string path, string log, Life life)
    {
        await using var file = File.Create(log);
        using var events = new DiskLogWriter(file);
        using var disk = RecordingDisk.Install(events);
        Guid? build = null;
        for (var session = 1; session <= life.Sessions; session++)
        {
            await using var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System);
            build ??= (await journal.StartBuildAsync(KeptRecord.Builds[0])).Id;
            for (var number = 1; number <= life.Entries; number++)
                disk.Acknowledge(Line(await journal.AppendAsync(build.Value, Draft($"session {session}", number, 12_000))));
            var backup = string.Create(CultureInfo.InvariantCulture, $"backup-{session}.db");
            await journal.BackUpAsync(Path.Combine(Path.GetDirectoryName(path)!, backup));
            disk.Acknowledge(BackupMark + backup);
        }
    }

    /// <summary>Appends until the disk is full, says why it ended, then sends the refused draft again with space made.</summary>
    public static async Task FillAsync(string path, long bytes)
    {
        using var disk = RecordingDisk.Install(log: null);
        await using var journal = await SqliteJournal.OpenAsync(path, TimeProvider.System);
        var build = (await journal.StartBuildAsync(KeptRecord.Builds[0])).Id;
        disk.MostBytes = bytes;
        for (var number = 1; ; number++)
        {
            var draft = Draft("filler", number, 12_000);
            try
            {
                Console.WriteLine(Line(await journal.AppendAsync(build, draft)));
            }
            catch (JournalUnavailableException refusal)
            {
                Console.WriteLine(refusal.Message);
                disk.MostBytes = long.MaxValue;
                Console.WriteLine(Line(await journal.AppendAsync(build, draft)));
                return;
            }
        }
    }

    /// <summary>Sequence and hash: what is checked afterwards.</summary>
    public static string Line(Entry entry) => string.Create(CultureInfo.InvariantCulture, $"{entry.Sequence} {entry.Hash}");

    // Every fourth entry carries a photograph, so that a transaction that spans many pages is cut short too.
    private static EntryDraft Draft(string person, int number, int photoBytes)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{person} {number}");
        var key = new Guid(Encoding.UTF8.GetBytes(Fingerprint.OfText(name))[..16]);
        if (number % PhotoEvery != 0)
            return new EntryDraft(key, person, "", new NoteWritten(name));
        var bytes = new byte[photoBytes];
        new Random(number).NextBytes(bytes);
        return EntryDraft.OfPhoto(key, person, name, "bench.jpg", "image/jpeg", bytes, "");
    }
}

/// <summary>The life of a journal that is recorded.</summary>
/// <param name="Sessions">How often it is opened and closed.</param>
/// <param name="Entries">How many entries each time.</param>
public sealed record Life(int Sessions, int Entries);
