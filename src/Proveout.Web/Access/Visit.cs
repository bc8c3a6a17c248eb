using System.Security.Claims;
using Microsoft.AspNetCore.Http;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>Who a request is from; nobody is asked on a bench that only this computer reaches.</summary>
internal static class Visit
{
    /// <summary>Who is signed in; null when nobody is, or nobody is asked.</summary>
    public static SignedIn? Of(HttpContext? context) => context?.Features.Get<SignedIn>();

    /// <summary>Notes who a request is from. Forms are tied to the session, so that a form of one is not taken from another.</summary>
    public static void Note(HttpContext context, SignedIn who)
    {
        context.Features.Set(who);
        context.User = new ClaimsPrincipal(new ClaimsIdentity([new Claim(ClaimTypes.NameIdentifier, who.Session.ToString())], "bench"));
    }

    /// <summary>Whether the person may do something here; everybody may on a bench that asks nobody.</summary>
    public static bool May(HttpContext? context, Permission permission) => Of(context) is not { } who || RolePolicy.Allows(who.Role, permission);
}
