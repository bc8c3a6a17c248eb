using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>Asks again, during an answer that goes on for long, whether who it is for is still signed in.</summary>
internal static class StillIn
{
    public static bool Asks(HttpContext context) =>
        context.RequestServices.GetService<SignInDesk>() is not { } desk || SessionCookie.Read(context) is { } token && desk.Find(token, isUse: false) is not null;
}
