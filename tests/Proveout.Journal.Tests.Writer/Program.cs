using System.Globalization;
using System.Text;
using Proveout.Journal;

// open PATH: opens the journal and says so, or why not.
// append PATH BUILD PERSON COUNT: appends that many entries and prints sequence and hash of each once it is acknowledged.
try
{
    await using var journal = await SqliteJournal.OpenAsync(args[1], TimeProvider.System);
    if (args[0] == "open")
        Console.WriteLine("opened");
    else
        await AppendAsync(journal, Guid.Parse(args[2]), args[3], int.Parse(args[4], CultureInfo.InvariantCulture));
    return 0;
}
catch (JournalException refusal)
{
    Console.WriteLine(refusal.GetType().Name);
    Console.WriteLine(refusal.Message);
    return 1;
}

static async Task AppendAsync(IJournal journal, Guid build, string person, int count)
{
    for (var number = 1; number <= count; number++)
    {
        var entry = await journal.AppendAsync(build, Draft(person, number));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{entry.Sequence} {entry.Hash}"));
    }
}

// Every fourth entry carries a photograph, so that a transaction that spans many pages is cut short too.
static EntryDraft Draft(string person, int number)
{
    var name = string.Create(CultureInfo.InvariantCulture, $"{person} {number}");
    var key = new Guid(Encoding.UTF8.GetBytes(Fingerprint.OfText(name))[..16]);
    if (number % 4 != 0)
        return new EntryDraft(key, person, "", new NoteWritten(name));
    var bytes = new byte[40_000];
    new Random(number).NextBytes(bytes);
    return EntryDraft.OfPhoto(key, person, name, "bench.jpg", "image/jpeg", bytes, "");
}
