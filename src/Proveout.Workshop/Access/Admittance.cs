namespace Proveout.Workshop;

/// <summary>A way in that was just opened.</summary>
/// <param name="Who">Who.</param>
/// <param name="Token">What the device has to show from now on; it is said once and kept nowhere.</param>
public sealed record Admittance(SignedIn Who, string Token);
