namespace Proveout.Workshop.Tests.Access;

public sealed class AccessFileTests : AccessStoreContract
{
    private readonly string _folder = Directory.CreateTempSubdirectory("proveout-store-").FullName;

    private string PathOfFile => Path.Combine(_folder, "builds.db.access");

    [Fact]
    public void A_file_that_was_emptied_lets_nobody_in()
    {
        Put("");
        Assert.Throws<AccessException>(() => Open().Read());
    }

    [Fact]
    public void The_file_is_readable_by_its_owner_alone()
    {
        Open().Change(book => (book with { Codes = [] }, true));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(PathOfFile));
    }

    protected override IAccessStore Open() => new AccessFile(PathOfFile);

    protected override void Put(string text) => File.WriteAllText(PathOfFile, text);

    protected override string Get() => File.ReadAllText(PathOfFile);

    protected override void Close() => Directory.Delete(_folder, recursive: true);
}
