namespace Proveout.Workshop;

/// <summary>Where the access book is kept. It is read anew at every question, so that a person removed by another process, on whichever computer, is out at once.</summary>
public interface IAccessStore
{
    /// <summary>Where it is, as people are told it.</summary>
    string Place { get; }

    /// <summary>The book as it stands.</summary>
    /// <exception cref="AccessException">It cannot be read, or what is there is no access book.</exception>
    AccessBook Read();

    /// <summary>Changes the book while nobody else does, and says what came of it.</summary>
    /// <param name="change">The new book, or the same one for no change, and the answer. It can be asked again, with the book of that moment.</param>
    /// <exception cref="AccessException">It cannot be read or written.</exception>
    T Change<T>(Func<AccessBook, (AccessBook Book, T Answer)> change);
}
