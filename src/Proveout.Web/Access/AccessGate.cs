using Microsoft.AspNetCore.Http;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.SignIn;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>The one place that lets a request through or not: by who sends it and what its address asks for. What asks for nothing is closed to everybody.</summary>
internal sealed class AccessGate(RequestDelegate next, SignInDesk desk, AccessNews news)
{
    // Also what a page asks of who may come in ends here: nobody is let in while that cannot be looked up.
    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await LetInAsync(context);
        }
        catch (AccessException) when (!context.Response.HasStarted)
        {
            news.Closed();
            await TroubleEndpoints.NobodyIn().ExecuteAsync(context);
        }
    }

    private Task LetInAsync(HttpContext context)
    {
        if (context.GetEndpoint() is not { } endpoint)
            return Refuse(context);
        var needs = endpoint.Metadata.GetMetadata<NeedsPermission>();
        if (SessionCookie.Read(context) is { Length: > 0 } token && Find(token, needs) is { } who)
            Visit.Note(context, who);
        return (needs, Visit.Of(context)) switch
        {
            (null, _) => Refuse(context),
            ({ Permission: Permission.Open }, _) => next(context),
            (_, null) => AskWhoAsync(context),
            var (asked, person) when RolePolicy.Allows(person.Role, asked.Permission) => next(context),
            var (_, person) => RefuseRole(context, person),
        };
    }

    // What is open to everybody, such as how a page looks, is shown also while nobody can be looked up.
    private SignedIn? Find(string token, NeedsPermission? needs)
    {
        try
        {
            return desk.Find(token, needs?.IsUse ?? false);
        }
        catch (AccessException) when (needs is { Permission: Permission.Open })
        {
            return null;
        }
    }

    // A form is not sent on to another page: "back" still has what was typed.
    private Task AskWhoAsync(HttpContext context) => HttpMethods.IsGet(context.Request.Method)
        ? new SeeOther(Addresses.SignInFor(context.Request)).ExecuteAsync(context)
        : PageResult.Of<SignInPage>(SignInView.Late with { AsksForCode = desk.AsksForCodes }, StatusCodes.Status401Unauthorized).ExecuteAsync(context);

    private Task RefuseRole(HttpContext context, SignedIn who)
    {
        news.NotAllowed(who, HttpMethods.IsPost(context.Request.Method) ? "POST" : HttpMethods.IsGet(context.Request.Method) ? "GET" : "another method");
        return TroubleEndpoints.NotForRole(who).ExecuteAsync(context);
    }

    private static Task Refuse(HttpContext context) => TroubleEndpoints.Closed().ExecuteAsync(context);
}
