using System.Text;
using FsCheck;
using FsCheck.Fluent;
using Proveout.Journal.Tests.Sqlite;

namespace Proveout.Journal.Tests.Content;

/// <summary>The stored JSON of each kind, letter by letter: journals that exist must stay readable, so these texts never change.</summary>
public sealed class StoredContentTests
{
    private static readonly string[] Texts =
    [
        """{"kind":"plan-fixed","planId":"dead tests","planFingerprint":"63cf807f545581be02ec6b84929ce0187591f413c78a03502fb56d5b98b03615","checkIds":["E1-element","X1-bonding"]}""",
        """{"kind":"instrument-declared","name":"bench meter","model":"hand-held, 4000 counts","leadsZeroed":true}""",
        """{"kind":"reading-entered","reading":{"checkId":"E1-element","setUp":"mains switch off","text":"105,8 Ω","valueSi":105.8,"overRange":false,"unit":"ohm","verdict":"pass"}}""",
        """{"kind":"reading-corrected","corrects":3,"reading":{"checkId":"E1-element","setUp":"mains switch off","text":"0L","valueSi":null,"overRange":true,"unit":"ohm","verdict":"pass"}}""",
        """{"kind":"check-skipped","checkId":"X1-bonding","reason":"The lid is not there yet."}""",
        """{"kind":"deviation","subject":"W7","note":"Blue instead of black."}""",
        """{"kind":"photo-attached","subject":"X1","fileName":"inlet.jpg","contentType":"image/jpeg","sha256":"039058c6f2c0cb492c533b0a4d14ef77cc0f78abccced5287d84a1a2011cfb81","length":3,"caption":"The inlet from behind"}""",
        """{"kind":"note-written","text":"Warm to the touch: \"60 °C\" <&> 60 °C"}""",
        """{"kind":"signed-off","person":"Ada Example","role":"builder","statement":"All dead tests were made."}""",
        """{"kind":"part-received","designation":"A1","arrival":"different","note":"Its fuse is 10 A."}""",
        """{"kind":"measurement-taken","analysis":"level","title":"Plate after one hour","summary":"Tilted by 0.3 mm.","results":[{"name":"Tilt","value":0.31,"expanded":0.02,"unit":"mm"}],"inputsJson":"{\"pitch\":\"0,5\"}","fileName":"","contentType":"","sha256":"","length":0}""",
        """{"kind":"mistake-found","faultKind":"ends-swapped","faultId":"ends-swapped:W7","note":"Swapped back at X1."}""",
        """{"kind":"deviation-answered","notedIn":"0198c0de-0000-7000-8000-000000000001","notedAt":6,"holds":true,"note":"Blue here too."}""",
    ];

    [Fact]
    public async Task Each_kind_is_stored_as_the_text_that_journals_already_hold()
    {
        using var folder = new TemporaryFolder();
        await using var journal = await SqliteJournal.OpenAsync(folder.Journal, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        foreach (var content in Drafts.EveryKind)
            await journal.AppendAsync(build.Id, content is PhotoAttached ? Drafts.Photo(1, 2, 3) : Drafts.Of(content));

        Assert.Equal(
            Texts,
            Enumerable.Range(1, Texts.Length).Select(sequence => RawFile.Read<string>(
                folder.Journal, "SELECT content FROM entries WHERE sequence = $sequence", ("$sequence", sequence))));
    }

    [Fact]
    public void Any_text_either_comes_back_unaltered_or_is_refused()
    {
        using var folder = new TemporaryFolder();
        var texts = ArbMap.Default.ArbFor<UnicodeString>();

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(200), Prop.ForAll(texts, text => ComesBackAsync(folder.Journal, text.Get ?? "")));
    }

    [Fact]
    public void Every_kind_of_content_is_among_the_texts()
    {
        var kinds = typeof(EntryContent).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(EntryContent)));

        Assert.Equal(kinds.OrderBy(type => type.Name), Drafts.EveryKind.Select(content => content.GetType()).OrderBy(type => type.Name));
    }

    private static async Task<bool> ComesBackAsync(string path, string text)
    {
        await using var journal = await SqliteJournal.OpenAsync(path, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build($"{Guid.NewGuid()}"));
        var draft = new EntryDraft(Guid.NewGuid(), $"P{text}", text, new Deviation(text, $"D{text}"));
        try
        {
            await journal.AppendAsync(build.Id, draft);
            var read = Assert.Single(await journal.ReadAsync(build.Id));
            return (read.Person, read.Instrument, read.Content) == (draft.Person, draft.Instrument, draft.Content);
        }
        catch (DraftRefusedException)
        {
            return text.Contains('\0') || Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)) != text;
        }
    }
}
