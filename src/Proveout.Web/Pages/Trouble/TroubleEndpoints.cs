using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Trouble;

/// <summary>Says in plain words that something is not there or went wrong; never how it went wrong inside.</summary>
internal static class TroubleEndpoints
{
    private static readonly TroubleView Failure = new(
        "Something went wrong",
        "The bench could not do that. What was entered before stands in the journal.",
        "Go back in the browser, where what you typed is still in its field, and try again. If it happens again, stop the bench and start it anew.");

    // What the exception says can hold a path or an address, and is for whoever runs the bench.
    private static readonly TroubleView NotLookedUp = new(
        "Nobody is let in",
        "The bench cannot look up who may come in, so it lets nobody in and has entered nothing now. What was entered before stands in the journal.",
        "Try again in a moment; what you typed is still in its field when you go back. Whoever runs the bench is told what is wrong by the command proveout people list, given the journal that it serves.");

    private static readonly TroubleView NotFound = new(
        "Nothing here",
        "There is no page at this address.",
        "Look whether the address is complete, or go to the builds and from there to the page you want.");

    private static readonly TroubleView NotTaken = new(
        "Not taken",
        "The bench could not read what the browser sent, so nothing was entered.",
        "Go back in the browser and send the form again.");

    private static readonly TroubleView Shut = new(
        "Not open",
        "Nobody may do that here.",
        "Go to the builds and from there to the page you want.");

    public static void Map(IEndpointRouteBuilder routes) => routes.MapFallback("{**address}", () => Missing()).Needs(Permission.See);

    /// <summary>The page for something that a role may not do.</summary>
    public static IResult NotForRole(SignedIn who) => PageResult.Of<TroublePage>(
        new TroubleView(
            "Not for your role",
            $"You are signed in as {who.Name}, {RolePolicy.Word(who.Role)}. That role may not do this, so nothing was entered.",
            "Ask a builder to do it, or whoever runs the bench for another role."),
        StatusCodes.Status403Forbidden);

    /// <summary>The page for an address that does not say whom it is for.</summary>
    public static IResult Closed() => PageResult.Of<TroublePage>(Shut, StatusCodes.Status403Forbidden);

    /// <summary>The page for everybody while it cannot be looked up who may come in.</summary>
    public static IResult NobodyIn() => PageResult.Of<TroublePage>(NotLookedUp, StatusCodes.Status503ServiceUnavailable);

    /// <summary>The page for something that does not exist.</summary>
    public static IResult Missing(string? what = null) =>
        PageResult.Of<TroublePage>(what is null ? NotFound : NotFound with { What = what }, StatusCodes.Status404NotFound);

    /// <summary>The page for something that is too much to wait for.</summary>
    public static IResult TooMuch(Diagnostic why) =>
        PageResult.Of<TroublePage>(new TroubleView("Too much for a page", why.Message, why.Mend.Replace("`", "", StringComparison.Ordinal)), StatusCodes.Status422UnprocessableEntity);

    public static Task ShowFailureAsync(HttpContext context) =>
        PageResult.Of<TroublePage>(Failure, StatusCodes.Status500InternalServerError).ExecuteAsync(context);

    public static Task ShowStatusAsync(StatusCodeContext status)
    {
        var code = status.HttpContext.Response.StatusCode;
        var view = code == StatusCodes.Status404NotFound ? NotFound : NotTaken;
        return PageResult.Of<TroublePage>(view, code).ExecuteAsync(status.HttpContext);
    }
}
