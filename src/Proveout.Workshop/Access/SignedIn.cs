namespace Proveout.Workshop;

/// <summary>Who a request is from.</summary>
/// <param name="Name">The name that stands on entries.</param>
/// <param name="Role">What the person may do, as it is now.</param>
/// <param name="Person">Identifier of the person.</param>
/// <param name="Session">Identifier of the session.</param>
public sealed record SignedIn(string Name, AccessRole Role, Guid Person, Guid Session);
