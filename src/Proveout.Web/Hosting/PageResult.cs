using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Proveout.Web.Hosting;

/// <summary>Answers with a page.</summary>
internal static class PageResult
{
    /// <summary>A page whose only parameter is its view.</summary>
    public static IResult Of<TPage>(object view, int status = StatusCodes.Status200OK)
        where TPage : IComponent =>
        new RazorComponentResult<TPage>(new Dictionary<string, object?> { ["View"] = view })
        {
            StatusCode = status,
            PreventStreamingRendering = true,
        };
}
