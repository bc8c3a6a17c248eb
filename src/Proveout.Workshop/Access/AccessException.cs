namespace Proveout.Workshop;

/// <summary>Who may come in cannot be read or kept; the message is for a person.</summary>
/// <param name="message">What, where, what to do.</param>
/// <param name="cause">What the system said.</param>
public sealed class AccessException(string message, Exception? cause) : Exception(message, cause);
