using Microsoft.AspNetCore.Http;

namespace Proveout.Web.Hosting;

/// <summary>Marks an answer that no browser is to keep, not even for "back": what it shows is shown once.</summary>
internal sealed class ShownOnce
{
    public static void Mark(HttpContext context) => context.Features.Set(new ShownOnce());

    public static bool Is(HttpContext context) => context.Features.Get<ShownOnce>() is not null;
}
