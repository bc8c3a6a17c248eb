using Microsoft.AspNetCore.Http;
using Proveout.Web.Access;

namespace Proveout.Web.Hosting;

/// <summary>Remembers who sits at this browser, so that the name is typed once.</summary>
internal static class PersonCookie
{
    private const string Name = "person";

    public static string Read(HttpContext context, string otherwise) =>
        Visit.Of(context) is { } who ? who.Name
        : context.Request.Cookies[Name] is { Length: > 0 } person ? Shorten(person) : otherwise;

    public static void Remember(HttpContext context, string person)
    {
        // Who is signed in is known without it.
        if (Visit.Of(context) is not null)
            return;
        context.Response.Cookies.Append(Name, Shorten(person), new CookieOptions
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Path = "/",
            MaxAge = TimeSpan.FromDays(365),
        });
    }

    private static string Shorten(string person) => person.Length <= 100 ? person : person[..100];
}
