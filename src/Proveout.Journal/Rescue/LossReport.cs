using System.Globalization;
using System.Text.Json;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Rescue;

/// <summary>Names what is lost: which build, which entry, which file, and what of it can still be made out.</summary>
internal static class LossReport
{
    private const int MostShown = 300;

    public static RescueReport Of(Salvage salvage) => new(
        [.. salvage.Builds.Select(build => new RescuedBuild(build.Id, SerialOf(build), build.Entries.Count, build.Recorded))],
        [.. salvage.Builds.SelectMany(build => Lost(build, salvage)), .. salvage.Homeless.Select(Homeless)],
        salvage.Mended);

    private static string SerialOf(SalvagedBuild build) => (build.Record ?? build.DoubtfulRecord) is { } record ? FieldText.Read(record.Serial) : "";

    private static IEnumerable<string> Lost(SalvagedBuild build, Salvage salvage)
    {
        var name = SerialOf(build) is { Length: > 0 } serial ? $"build {serial} ({build.Id})" : $"build {build.Id}";
        if (build.Record is null)
            yield return build.DoubtfulRecord is null
                ? $"The record of {name} itself (serial number, machine, builder, start) cannot be read."
                : $"The record of {name} itself was altered: its serial number, machine, builder or start may not be what was recorded.";
        if (build.End is null)
            yield return $"How many entries {name} had is not readable: entries after {build.Recorded} would not be missed.";
        foreach (var (first, last) in Runs(build.Missing))
            yield return first == last
                ? $"Entry {first} of {name} is lost.{Remains(build, first)}"
                : $"Entries {first} to {last} of {name} are lost.{string.Concat(build.Doubtful.Where(entry => entry.Sequence >= first && entry.Sequence <= last).Select(Remains))}";
        foreach (var entry in build.Doubtful.Where(entry => entry.Sequence > build.Recorded || entry.Sequence < 1))
            yield return $"An entry of {name} whose number cannot be told is lost.{Remains(entry)}";
        foreach (var entry in build.Entries.Values)
            if (FileOf(entry) is { } file && !salvage.Files.ContainsKey(file.Sha256))
                yield return $"The {file.Word} {file.FileName} of entry {entry.Sequence} of {name} is lost.";
    }

    private static IEnumerable<(long First, long Last)> Runs(IEnumerable<long> numbers)
    {
        (long First, long Last)? run = null;
        foreach (var number in numbers)
        {
            if (run is { } open && number == open.Last + 1)
            {
                run = (open.First, number);
                continue;
            }
            if (run is { } done)
                yield return done;
            run = (number, number);
        }
        if (run is { } end)
            yield return end;
    }

    private static KeptFile? FileOf(StoredEntry entry)
    {
        try
        {
            return KeptFile.Of(entry.Decode().Content);
        }
        catch (JournalDamagedException cause) when (cause.InnerException is JsonException or NotSupportedException or FormatException or OverflowException)
        {
            // Of a kind that only a newer Proveout knows: kept as it is, without knowing its file.
            return null;
        }
    }

    private static string Remains(SalvagedBuild build, long number) =>
        build.Doubtful.FirstOrDefault(entry => entry.Sequence == number) is { } entry ? Remains(entry) : "";

    private static string Remains(StoredEntry entry) =>
        string.Create(CultureInfo.InvariantCulture, $" What can be made out, and is not proven: {Shown(entry.Recorded)}, {Shown(entry.Person)}: {Shown(entry.Content)}");

    private static string Homeless(StoredEntry entry) => $"An entry whose build cannot be told is lost.{Remains(entry)}";

    private static string Shown(byte[] field) =>
        string.Concat(FieldText.Read(field).Take(MostShown).Select(letter => char.IsControl(letter) || char.IsSurrogate(letter) ? '?' : letter));
}
