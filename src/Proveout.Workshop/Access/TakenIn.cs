namespace Proveout.Workshop;

/// <summary>What came of taking in the people of another bench.</summary>
/// <param name="Added">Who may sign in here from now on.</param>
/// <param name="Known">Who had the name of somebody here, and was left out.</param>
public sealed record TakenIn(IReadOnlyList<KnownPerson> Added, IReadOnlyList<KnownPerson> Known);
