namespace Proveout.Workshop.Tests.Access;

public sealed class AccessStoreTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("proveout-store-").FullName;

    private string PathOfFile => Path.Combine(_folder, "builds.db.access");

    [Fact]
    public void What_two_change_at_once_is_not_lost()
    {
        Parallel.For(0, 40, new ParallelOptions { MaxDegreeOfParallelism = 8 }, number => new AccessStore(PathOfFile).Change(book => (book.With(Person($"Person {number}")), true)));
        Assert.Equal(40, new AccessStore(PathOfFile).Read().People.Count);
    }

    [Fact]
    public void Everything_comes_back_as_it_was_kept()
    {
        var person = Person("Grüße \"<b>\" Lindt");
        var when = new DateTimeOffset(2026, 11, 28, 8, 0, 0, TimeSpan.Zero);
        var book = new AccessBook([person], [new JoinCode("hash", person.Id, when, 2)], [new AccessSession(Guid.NewGuid(), "hash", person.Id, when, when, "phone at 192.0.2.4")]);
        new AccessStore(PathOfFile).Change(_ => (book, true));
        var read = new AccessStore(PathOfFile).Read();
        Assert.Equal((book.People[0], book.Codes[0], book.Sessions[0]), (read.People[0], read.Codes[0], read.Sessions[0]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("nothing of the kind")]
    [InlineData("{}")]
    [InlineData("{\"Format\":\"proveout-access 3\",\"Book\":{\"People\":[],\"Codes\":[],\"Sessions\":[]}}")]
    [InlineData("{\"Format\":\"proveout-access 1\",\"Book\":{\"People\":[]}}")]
    public void A_file_that_is_no_access_book_is_refused_and_left_alone(string text)
    {
        File.WriteAllText(PathOfFile, text);
        Assert.Throws<AccessException>(() => new AccessStore(PathOfFile).Read());
        Assert.Throws<AccessException>(() => new AccessStore(PathOfFile).Change(book => (book.With(Person("Ida")), true)));
        Assert.Equal(text, File.ReadAllText(PathOfFile));
    }

    [Fact]
    public void Each_role_may_do_what_it_is_for_and_nothing_more()
    {
        Permission[] all = [Permission.Open, Permission.See, Permission.Sign, Permission.Enter];
        Assert.Equal([Permission.Open, Permission.See], all.Where(permission => RolePolicy.Allows(AccessRole.Reader, permission)));
        Assert.Equal([Permission.Open, Permission.See, Permission.Sign], all.Where(permission => RolePolicy.Allows(AccessRole.Checker, permission)));
        Assert.Equal(all, all.Where(permission => RolePolicy.Allows(AccessRole.Builder, permission)));
        Assert.False(RolePolicy.Allows(AccessRole.Builder, (Permission)99));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("two\nlines")]
    [InlineData("turned\u202Earound")]
    [InlineData("un\u200Bseen")]
    public void A_name_that_does_not_show_is_none(string name) => Assert.False(PersonName.IsOne(name));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static KnownPerson Person(string name) => new(Guid.NewGuid(), name, AccessRole.Builder, "hash", new DateTimeOffset(2026, 11, 28, 8, 0, 0, TimeSpan.Zero));
}
