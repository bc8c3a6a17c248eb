namespace Proveout.Workshop;

/// <summary>Where tries to come in are counted.</summary>
public interface IAttemptTally
{
    /// <summary>Looks at counts and changes them while nobody else does.</summary>
    /// <param name="names">Which.</param>
    /// <param name="forget">What was last changed before this time is gone.</param>
    /// <param name="change">Gets those that there are, by name; gives those that are to stand from now on, and the answer. It can be asked again.</param>
    /// <exception cref="AccessException">It cannot be read or written.</exception>
    T Change<T>(IReadOnlyList<string> names, DateTimeOffset forget, Func<IReadOnlyDictionary<string, AttemptCount>, (IReadOnlyDictionary<string, AttemptCount> Changed, T Answer)> change);
}
