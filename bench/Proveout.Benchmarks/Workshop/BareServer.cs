using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Proveout.Benchmarks.Workshop;

/// <summary>The least that the same framework does for the same requests: one page with a form, one form that is read; nothing is kept.</summary>
internal static class BareServer
{
    private const string Page =
        "<!DOCTYPE html><html lang=\"en\"><title>Bare</title><form method=\"post\" data-form=\"reading\"><input name=\"__RequestVerificationToken\" value=\"x\">"
        + "<input name=\"key\" value=\"x\"><input name=\"text\"></form></html>";

    public static WebApplication Build()
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        builder.Services.AddRouting();
        var app = builder.Build();
        app.MapGet("/builds/{build}", (string build) => Results.Redirect($"/builds/{build}/checks/1"));
        app.MapGet("/builds/{build}/checks/{check}", () => Results.Content(Page, "text/html"));
        app.MapPost("/builds/{build}/checks/{check}", async context =>
        {
            await context.Request.ReadFormAsync();
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            context.Response.Headers.Location = context.Request.Path.Value;
        });
        return app;
    }
}
