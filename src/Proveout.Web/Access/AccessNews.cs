using Microsoft.Extensions.Logging;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>Notes who came in, went out, or was refused. No password, code or token is ever handed to it, and no name that the bench does not know: people type passwords there.</summary>
internal sealed partial class AccessNews(ILogger<AccessNews> log)
{
    public const string Category = "Proveout.Web.Access.AccessNews";

    public void CameIn(SignedIn who, Caller caller, string by) => LogCameIn(who.Name, RolePolicy.Word(who.Role), by, caller.Device);

    public void Refused(KnownPerson? person, Caller caller, string by) => LogRefused(person?.Name ?? "a name not known here", by, caller.Device);

    public void WentOut(SignedIn who) => LogWentOut(who.Name);

    public void Changed(SignedIn who, Caller caller, string what) => LogChanged(who.Name, what, caller.Device);

    public void ChangeRefused(SignedIn who, Caller caller) => LogChangeRefused(who.Name, caller.Device);

    public void NotAllowed(SignedIn who, string method) => LogNotAllowed(who.Name, RolePolicy.Word(who.Role), method);

    public void Closed() => LogClosed();

    [LoggerMessage(1, LogLevel.Information, "{Person} ({Role}) came in by {Means} on a {Device}.")]
    private partial void LogCameIn(string person, string role, string means, string device);

    [LoggerMessage(2, LogLevel.Warning, "A try by {Means} for {Person} was refused on a {Device}.")]
    private partial void LogRefused(string person, string means, string device);

    [LoggerMessage(3, LogLevel.Information, "{Person} signed out.")]
    private partial void LogWentOut(string person);

    [LoggerMessage(4, LogLevel.Warning, "{Person} ({Role}) asked with {Method} for what that role may not do.")]
    private partial void LogNotAllowed(string person, string role, string method);

    [LoggerMessage(5, LogLevel.Warning, "{Person}: {What}, on a {Device}.")]
    private partial void LogChanged(string person, string what, string device);

    [LoggerMessage(6, LogLevel.Warning, "A change of the second factor of {Person} was refused on a {Device}.")]
    private partial void LogChangeRefused(string person, string device);

    [LoggerMessage(7, LogLevel.Error, "Nobody is let in: who may come in cannot be looked up or changed. `proveout people list`, with the journal that is served, says why.")]
    private partial void LogClosed();
}
