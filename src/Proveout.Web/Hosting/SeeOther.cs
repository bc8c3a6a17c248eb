using Microsoft.AspNetCore.Http;

namespace Proveout.Web.Hosting;

/// <summary>Sends the browser to a page after a form, so that "reload" does not send the form again (RFC 9110, 303).</summary>
internal sealed class SeeOther(string address) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
        httpContext.Response.Headers.Location = address;
        return Task.CompletedTask;
    }
}
