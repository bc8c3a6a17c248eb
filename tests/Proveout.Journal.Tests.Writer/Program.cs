using System.Globalization;
using Proveout.Journal;
using Proveout.Journal.Trials;
using Proveout.Journal.Trials.Servers;

// open PATH: opens the journal and says so, or why not.
// append PATH BUILD PERSON COUNT: appends that many entries and prints sequence and hash of each once it is acknowledged.
// keep PATH: records what stands in the files kept of each format.
// record PATH LOG SESSIONS ENTRIES: a whole life of a journal, with a log of every write and sync of the disk.
// fill PATH BYTES: appends until the disk is full, then once more when it is no longer.
// benches PLACE PERSON COUNT ENTRIES: that many benches at once, over all builds of the journal in turn, each entry sent twice.
// servercrashes COUNT: the full trial of docs/methods/workshop.md.
// large PATH MEGABYTES: a journal of that size with one bit flipped in each of many pages; rescue PATH NEW: what its rescue takes.
// kills COUNT and powercuts COUNT and flips COUNT: the full trials; docs/methods/durability.md has the figures.
try
{
    switch (args)
    {
        case ["kills", var count]:
            Console.WriteLine(await KillTrial.RunAsync(Number(count), writersAtOnce: 4, seed: 20310314));
            return 0;
        case ["powercuts", var count]:
            Console.WriteLine(await PowerCutTrial.RunAsync(Number(count), seed: 20310314, new Life(Sessions: 4, Entries: 400), disksThatLie: false));
            return 0;
        case ["flips", var count]:
            Console.WriteLine(await FlipTrial.RunAsync(Number(count), seed: 20310314));
            return 0;
        case ["servercrashes", var count]:
            Console.WriteLine(await ServerCrashTrial.RunAsync(Number(count), benches: 16, seed: 20310314));
            return 0;
        case ["large", var path, var megabytes]:
            Console.WriteLine(await RescueTrial.MakeAsync(path, Number(megabytes), seed: 20310314));
            return 0;
        case ["rescue", var path, var target]:
            Console.WriteLine(await RescueTrial.RunAsync(path, target));
            return 0;
        case ["record", var path, var log, var sessions, var entries]:
            await Writing.RecordAsync(path, log, new Life(Number(sessions), Number(entries)));
            return 0;
        case ["fill", var path, var bytes]:
            await Writing.FillAsync(path, Number(bytes));
            return 0;
    }

    await using var journal = await JournalPlace.OpenAsync(args[1], TimeProvider.System);
    switch (args)
    {
        case ["keep", _]:
            await KeptRecord.WriteAsync(journal);
            break;
        case ["append", _, var build, var person, var count]:
            await Writing.AppendAsync(journal, Guid.Parse(build), person, Number(count));
            break;
        case ["benches", _, var person, var benches, var entries]:
            await Writing.AtBenchesAsync(journal, person, Number(benches), Number(entries));
            break;
        default:
            Console.WriteLine("opened");
            break;
    }
    return 0;
}
catch (JournalException refusal)
{
    Console.WriteLine(refusal.GetType().Name);
    Console.WriteLine(refusal.Message);
    return 1;
}

static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
