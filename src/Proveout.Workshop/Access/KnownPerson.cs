namespace Proveout.Workshop;

/// <summary>A person who may sign in.</summary>
/// <param name="Id">Made when the person is added, so that a name given again later does not open old sessions.</param>
/// <param name="Name">The name that stands on entries.</param>
/// <param name="Role">What the person is at the bench.</param>
/// <param name="Password">The password's hash; empty for someone who comes in by join codes only.</param>
/// <param name="Added">When, in universal time.</param>
public sealed record KnownPerson(Guid Id, string Name, AccessRole Role, string Password, DateTimeOffset Added)
{
    /// <summary>What the person has to show besides the password; null when nothing is.</summary>
    public SecondFactor? Second { get; init; }

    /// <summary>Whether a name, however its letters are cased, is this person's.</summary>
    public bool IsCalled(string name) => PersonName.Same(Name, name);
}
