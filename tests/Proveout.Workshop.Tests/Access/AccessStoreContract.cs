namespace Proveout.Workshop.Tests.Access;

/// <summary>What every place promises that keeps who may come in: two stores on it are two processes, or two servers.</summary>
public abstract class AccessStoreContract : IDisposable
{
    private static readonly DateTimeOffset When = new(2026, 11, 28, 8, 0, 0, TimeSpan.Zero);
    private IAccessStore? _here;
    private IAccessStore? _there;

    private IAccessStore Here => _here ??= Open();

    private IAccessStore There => _there ??= Open();

    [Fact]
    public void Before_anybody_is_added_nobody_is_there()
    {
        Assert.Empty(Here.Read().People);
        Assert.Empty(There.Read().Sessions);
    }

    [Fact]
    public void What_two_change_at_once_is_not_lost()
    {
        Parallel.For(0, 40, new ParallelOptions { MaxDegreeOfParallelism = 8 }, number => (number % 2 == 0 ? Here : There).Change(book => (book.With(Person($"Person {number}")), true)));
        Assert.Equal(40, Here.Read().People.Count);
        Assert.Equal(40, There.Read().People.Count);
    }

    [Fact]
    public void Everything_comes_back_as_it_was_kept()
    {
        var person = Person("Grüße \"<b>\" \\u0000 Lindt") with { Second = new SecondFactor("KEY", 7, ["hash", ""], When, IsOn: true) { Misses = 3 } };
        var book = new AccessBook([person], [new JoinCode("hash", person.Id, When, 2)], [new AccessSession(Guid.NewGuid(), "hash", person.Id, When, When, "phone at 192.0.2.4")]).Noting(person, AccessEvent.PutOn, When);
        Here.Change(_ => (book, true));
        var read = There.Read();
        Assert.Equal((book.Codes[0], book.Sessions[0], book.NotesOrNone[0]), (read.Codes[0], read.Sessions[0], read.NotesOrNone[0]));
        Assert.Equal(person with { Second = null }, read.People[0] with { Second = null });
        Assert.Equal(person.Second with { Recovery = [] }, read.People[0].Second! with { Recovery = [] });
        Assert.Equal(person.Second.Recovery, read.People[0].Second!.Recovery);
    }

    [Fact]
    public void What_one_changed_the_other_reads_at_once_and_again_after_the_next_change()
    {
        Assert.Empty(There.Read().People);
        Here.Change(book => (book.With(Person("Ida")), true));
        Assert.Equal("Ida", Assert.Single(There.Read().People).Name);
        Assert.Equal("Ida", Assert.Single(There.Read().People).Name);
        There.Change(book => (book.Without(book.People[0].Id), true));
        Assert.Empty(Here.Read().People);
    }

    [Fact]
    public void The_same_book_given_back_changes_nothing_and_its_answer_is_given()
    {
        Here.Change(book => (book.With(Person("Ida")), true));
        Assert.Equal("Ida", There.Change(book => (book, book.People[0].Name)));
        Assert.Single(Here.Read().People);
    }

    [Fact]
    public void A_change_that_fails_inside_changes_nothing_and_holds_nobody_up()
    {
        Assert.Throws<InvalidOperationException>(() => Here.Change<bool>(_ => throw new InvalidOperationException("Broken inside.")));
        There.Change(book => (book.With(Person("Ida")), true));
        Assert.Single(Here.Read().People);
    }

    [Theory]
    [InlineData("nothing of the kind")]
    [InlineData("{}")]
    [InlineData("{\"Format\":\"proveout-access 3\",\"Book\":{\"People\":[],\"Codes\":[],\"Sessions\":[]}}")]
    [InlineData("{\"Format\":\"proveout-access 1\",\"Book\":{\"People\":[]}}")]
    public void What_is_no_access_book_lets_nobody_in_and_is_left_alone(string text)
    {
        Here.Change(book => (book.With(Person("Ida")), true));
        Assert.Single(There.Read().People);
        Put(text);
        foreach (var store in new[] { Here, There })
        {
            Assert.Contains("nobody is let in", Assert.Throws<AccessException>(() => store.Read()).Message, StringComparison.Ordinal);
            Assert.Throws<AccessException>(() => store.Change(book => (book.With(Person("Ida")), true)));
        }

        Assert.Equal(text, Get());
    }

    public void Dispose()
    {
        Close();
        GC.SuppressFinalize(this);
    }

    /// <summary>A store at the place of this test; each call as from another process.</summary>
    protected abstract IAccessStore Open();

    /// <summary>Puts another text where the book is.</summary>
    protected abstract void Put(string text);

    /// <summary>The text where the book is.</summary>
    protected abstract string Get();

    /// <summary>Takes the place away.</summary>
    protected abstract void Close();

    private static KnownPerson Person(string name) => new(Guid.NewGuid(), name, AccessRole.Builder, "hash", When);
}
