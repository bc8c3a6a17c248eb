using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Proveout.Journal.Tests.Chain;

/// <summary>docs/methods/journal-chain.md against a second computation, against the sha256sum of the system, and against the journal.</summary>
public sealed partial class WorkedExampleTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "journal-chain.md"));

    private static readonly Dictionary<string, string>[] Records =
        [.. Block("fields").Select(Fields)];

    [Fact]
    public void The_page_shows_the_record_of_a_build_and_an_entry_that_refers_to_it()
    {
        Assert.Equal(2, Records.Length);
        Assert.Equal(Records[0]["hash"], Records[1]["previous hash"]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void The_fields_on_the_page_give_the_hash_on_the_page(int record)
    {
        var bytes = Records[record].Where(field => field.Key != "hash").SelectMany(field => Netstring(field.Value));

        Assert.Equal(Records[record]["hash"], Convert.ToHexString(SHA256.HashData([.. bytes])).ToLowerInvariant());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public async Task The_command_on_the_page_prints_the_hash_on_the_page(int record)
    {
        Assert.SkipUnless(File.Exists("/bin/sh"), "This system has no POSIX shell.");
        using var shell = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", Block("sh")[record]]) { RedirectStandardOutput = true })!;

        var printed = await shell.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);

        Assert.StartsWith(Records[record]["hash"], printed, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_journal_gives_the_hashes_on_the_page()
    {
        using var folder = new TemporaryFolder();
        await using var journal = await SqliteJournal.OpenAsync(folder.Journal, new SteppingClock());
        var (build, entry) = (Records[0], Records[1]);

        await journal.StartBuildAsync(new BuildDraft(
            Guid.Parse(build["build"]), build["serial number"], build["machine"], build["machine file"], build["builder"]));
        var recorded = await journal.AppendAsync(Guid.Parse(build["build"]), new EntryDraft(
            Guid.Parse(entry["key"]), entry["person"], entry["instrument"], new ReadingEntered(Drafts.Reading("105,8 Ω", 105.8))));

        Assert.Equal(build["hash"], recorded.PreviousHash);
        Assert.Equal(entry["hash"], recorded.Hash);
    }

    [Fact]
    public void The_seal_on_the_page_holds_for_the_entry_on_the_page_and_for_no_other()
    {
        var fields = Fields(Block("seal").Single());
        var seal = new Seal(
            Guid.Parse(fields["build"]), int.Parse(fields["entries"], CultureInfo.InvariantCulture), fields["hash"],
            DateTimeOffset.Parse(fields["sealed"], CultureInfo.InvariantCulture), fields["person"], fields["public key"], fields["signature"]);
        var hashes = Records.Select(record => record["hash"]).ToArray();

        Assert.Equal(SealStanding.Holds, Assert.Single(SealCheck.Run([seal], seal.BuildId, hashes, seal.PublicKey)).Standing);
        Assert.Equal(SealStanding.Rewritten, Assert.Single(SealCheck.Run([seal], seal.BuildId, [hashes[0], hashes[0]], seal.PublicKey)).Standing);
        Assert.Equal(seal, SealText.Read(SealText.Write(seal)));
    }

    [Fact]
    public async Task The_commands_on_the_page_find_the_seal_right()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/openssl") && File.Exists("/bin/sh"), "This system has no openssl.");
        using var folder = new TemporaryFolder();
        using var shell = Process.Start(
            new ProcessStartInfo("/bin/sh", ["-c", Block("check").Single()]) { RedirectStandardOutput = true, WorkingDirectory = folder.Path })!;

        Assert.Equal("Verified OK\n", await shell.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken));
    }

    private static Dictionary<string, string> Fields(string block) =>
        block.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(" = ", 2)).ToDictionary(pair => pair[0], pair => pair[1]);

    private static byte[] Netstring(string field)
    {
        var bytes = Encoding.UTF8.GetBytes(field);
        return [.. Encoding.ASCII.GetBytes($"{bytes.Length}:"), .. bytes, (byte)','];
    }

    private static string[] Block(string kind) =>
        [.. Fenced().Matches(Page).Where(match => match.Groups["kind"].Value == kind).Select(match => match.Groups["text"].Value)];

    [GeneratedRegex("^```(?<kind>[a-z]+)\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fenced();
}
