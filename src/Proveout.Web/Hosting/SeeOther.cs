using Microsoft.AspNetCore.Http;

namespace Proveout.Web.Hosting;

/// <summary>Sends the browser to a page after a form, so that "reload" does not send the form again (RFC 9110, 303).</summary>
/// <remarks>
/// A browser keeps the fragment of the form's own address when the new one has none (RFC 9110, 10.2.2), and that names a refusal which is not there.
/// So the new address has an empty one: the top of the page, which leaves the focus to the page.
/// </remarks>
internal sealed class SeeOther(string address) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
        var isAfterForm = HttpMethods.IsPost(httpContext.Request.Method) && !address.Contains('#', StringComparison.Ordinal);
        httpContext.Response.Headers.Location = isAfterForm ? $"{address}#" : address;
        return Task.CompletedTask;
    }
}
