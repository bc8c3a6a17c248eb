using System.Text;
using FsCheck;
using FsCheck.Fluent;
using Proveout.Journal.Tests.Sqlite;

namespace Proveout.Journal.Tests.Chain;

/// <summary>The law of the chain: whatever single thing is changed behind the journal's back is found, and where.</summary>
public sealed class ChainLawTests : IAsyncLifetime
{
    private static readonly Gen<EntryContent> Content = Gen.OneOf(
        Gen.Elements(Drafts.EveryKind.Where(content => content is not ReadingCorrected and not PhotoAttached)),
        ArbMap.Default.GeneratorFor<UnicodeString>().Select(text => (EntryContent)new NoteWritten(Whole(text.Get ?? ""))));

    private static readonly Gen<Forgery> AnyForgery =
        from place in Gen.Elements<ForgedPlace>(ForgedPlace.All)
        from row in Gen.Choose(0, 1000)
        from how in Gen.Elements(ForgedHow.ChangeByte, ForgedHow.InsertByte, ForgedHow.DropByte)
        from position in Gen.Choose(0, 100_000)
        from value in Gen.Choose(1, 255)
        select new Forgery(place, row, how, position, (byte)value);

    private readonly TemporaryFolder _folder = new();
    private SqliteJournal _journal = null!;
    private int _builds;

    public async ValueTask InitializeAsync()
    {
        _journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        RawFile.TakeGuardsOff(_folder.Journal, except: ["builds_start", "entries_follow"]);
    }

    public async ValueTask DisposeAsync()
    {
        await _journal.DisposeAsync();
        _folder.Dispose();
    }

    [Fact]
    public void A_byte_changed_put_in_or_taken_out_of_any_stored_field_is_found_and_located()
    {
        var cases =
            from contents in Content.NonEmptyListOf()
            from forgery in AnyForgery
            select (Contents: contents.Take(6).ToArray(), Forgery: forgery);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(300), Prop.ForAll(cases.ToArbitrary(), each => IsFoundAsync(each.Contents, each.Forgery)));
    }

    [Theory]
    [InlineData("DELETE FROM entries WHERE build_id = $build AND sequence = 1", 1, ChainPart.Order)]
    [InlineData("DELETE FROM entries WHERE build_id = $build AND sequence = 2", 2, ChainPart.Order)]
    [InlineData("DELETE FROM entries WHERE build_id = $build AND sequence = 4", 4, ChainPart.End)]
    [InlineData("DELETE FROM entries WHERE build_id = $build AND sequence > 2", 3, ChainPart.End)]
    [InlineData("UPDATE entries SET sequence = 7 WHERE build_id = $build AND sequence = 4", 4, ChainPart.Order)]
    [InlineData("UPDATE entries SET sequence = 0 WHERE build_id = $build AND sequence = 1", 1, ChainPart.Order)]
    [InlineData("UPDATE entries SET sequence = sequence - 1 WHERE build_id = $build", 1, ChainPart.Order)]
    [InlineData("UPDATE entries SET sequence = CASE sequence WHEN 2 THEN 30 ELSE 2 END WHERE build_id = $build AND sequence IN (2, 3)", 2, ChainPart.Link)]
    [InlineData("UPDATE ends SET entries = 3 WHERE build_id = $build", 4, ChainPart.End)]
    [InlineData("UPDATE ends SET entries = 5 WHERE build_id = $build", 5, ChainPart.End)]
    [InlineData("DELETE FROM ends WHERE build_id = $build", 4, ChainPart.End)]
    [InlineData("DELETE FROM photos", 4, ChainPart.Photo)]
    [InlineData("DELETE FROM builds WHERE id = $build", 0, ChainPart.BuildRecord)]
    public async Task An_entry_taken_out_moved_or_cut_off_is_found_and_located(string sql, int sequence, ChainPart part)
    {
        var build = await RecordAsync([new NoteWritten("1"), new NoteWritten("2"), new NoteWritten("3")]);

        RawFile.Execute(_folder.Journal, sql, ("$build", build.ToString("D")));

        var broken = Assert.IsType<ChainBroken>(await _journal.VerifyAsync(build));
        Assert.Equal((sequence, part), (broken.Sequence, broken.Part));
    }

    private async Task<bool> IsFoundAsync(EntryContent[] contents, Forgery forgery)
    {
        var build = await RecordAsync(contents);
        var last = contents.Length + 1;
        Assert.IsType<ChainWhole>(await _journal.VerifyAsync(build));
        var row = forgery.Place.Table == "photos" ? last : 1 + (forgery.Row % last);

        Forge(build, row, forgery);

        return await _journal.VerifyAsync(build) is ChainBroken broken && broken.Sequence == Expected(forgery.Place, row, last);
    }

    // Half a surrogate pair is refused by the journal and becomes U+FFFD here.
    private static string Whole(string text) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));

    private static int Expected(ForgedPlace place, int row, int last) => place.Table switch
    {
        "builds" => 0,
        "entries" => row,
        _ => last,
    };

    private void Forge(Guid build, int row, Forgery forgery)
    {
        var (table, column) = forgery.Place;
        var (where, type) = table switch
        {
            "builds" => ("id = $build", "TEXT"),
            "entries" => ("build_id = $build AND sequence = $row", "TEXT"),
            "ends" => ("build_id = $build", "TEXT"),
            _ => (
                "sha256 = (SELECT content ->> 'sha256' FROM entries WHERE build_id = $build AND sequence = $row)",
                column == "bytes" ? "BLOB" : "TEXT"),
        };
        (string, object)[] parameters = [("$build", build.ToString("D")), ("$row", row)];
        var before = RawFile.Read<byte[]>(_folder.Journal, $"SELECT CAST({column} AS BLOB) FROM {table} WHERE {where}", parameters);
        var changed = RawFile.Execute(
            _folder.Journal,
            $"UPDATE {table} SET {column} = CAST($after AS {type}) WHERE {where}",
            [.. parameters, ("$after", forgery.Apply(before))]);
        Assert.Equal(1, changed);
    }

    /// <summary>A build of its own with these entries, and a photograph of its own at the end.</summary>
    private async Task<Guid> RecordAsync(EntryContent[] contents)
    {
        var number = ++_builds;
        var build = await _journal.StartBuildAsync(Drafts.Build($"{Guid.NewGuid()}"));
        foreach (var content in contents)
            await _journal.AppendAsync(build.Id, Drafts.Of(content));
        await _journal.AppendAsync(build.Id, Drafts.Photo([1, 2, 3, .. BitConverter.GetBytes(number)]));
        return build.Id;
    }
}
