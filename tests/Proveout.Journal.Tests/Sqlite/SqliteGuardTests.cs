using Microsoft.Data.Sqlite;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>The database itself refuses what the journal never does.</summary>
public sealed class SqliteGuardTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("UPDATE entries SET person = 'Bo Example' WHERE sequence = 1", "an entry is never changed")]
    [InlineData("UPDATE entries SET hash = hash", "an entry is never changed")]
    [InlineData("DELETE FROM entries WHERE sequence = 2", "an entry is never removed")]
    [InlineData("INSERT OR REPLACE INTO entries SELECT build_id, 1, key, recorded, 'Bo Example', instrument, content, previous_hash, hash FROM entries WHERE sequence = 1", "at the end of the record")]
    [InlineData("INSERT OR REPLACE INTO entries SELECT build_id, 3, key, recorded, person, instrument, content, hash, hash FROM entries WHERE sequence = 2", "at the end of the record")]
    [InlineData("INSERT INTO entries SELECT build_id, 4, 'k', recorded, person, instrument, content, hash, 'h' FROM entries WHERE sequence = 2", "at the end of the record")]
    [InlineData("INSERT INTO entries SELECT build_id, 3, 'k', recorded, person, instrument, content, previous_hash, 'h' FROM entries WHERE sequence = 2", "at the end of the record")]
    [InlineData("UPDATE builds SET serial = '002'", "a build is never changed")]
    [InlineData("DELETE FROM builds", "a build is never removed")]
    [InlineData("INSERT OR REPLACE INTO builds SELECT id, '002', machine_name, machine_fingerprint, builder, started, hash FROM builds", "a build is started once")]
    [InlineData("UPDATE ends SET entries = 1", "follows its entries")]
    [InlineData("UPDATE ends SET entries = 3", "follows its entries")]
    [InlineData("DELETE FROM ends", "never removed")]
    [InlineData("UPDATE photos SET bytes = x'00'", "a photograph is never changed")]
    [InlineData("DELETE FROM photos", "a photograph is never removed")]
    [InlineData("INSERT OR REPLACE INTO photos SELECT sha256, x'00' FROM photos", "a photograph is kept once")]
    [InlineData("UPDATE seals SET person = 'Bo Example'", "a seal is never changed")]
    [InlineData("DELETE FROM seals", "a seal is never removed")]
    public async Task The_database_refuses_to_change_what_is_recorded(string sql, string reason)
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await journal.AppendAsync(build.Id, Drafts.Note("first"));
        var last = await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        using var key = SealKey.Make();
        await journal.SealAsync(build.Id, key, "Ada Example");

        var refusal = Assert.Throws<SqliteException>(() => RawFile.Execute(_folder.Journal, sql));

        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(new ChainWhole(2, last.Hash), await journal.VerifyAsync(build.Id));
    }
}
