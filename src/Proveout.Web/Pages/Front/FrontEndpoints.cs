using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Builds;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Front;

/// <summary>The front page: builds in work, and the form that starts one.</summary>
internal static class FrontEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.Front, (HttpContext context, IBench bench, IBuildsDesk builds) => ShowAsync(context, bench, builds, null));
        routes.MapPost(Addresses.Front, StartAsync);
    }

    private static async Task<IResult> StartAsync(HttpContext context, IBench bench, IBuildsDesk builds)
    {
        var form = await PostedForm.ReadAsync(context);
        if (form.Problems.Count > 0)
            return await ShowAsync(context, bench, builds, form.Refuse(form.Problems));
        if (form.Text("machine").Length == 0)
            return await ShowAsync(context, bench, builds, form.Refuse(["No machine is chosen. Choose one of the machines below."]));
        var request = new StartBuild(form.Text("machine"), form.Text("serial"), form.Person("", "builder"), form.Text("instrument"));
        var started = await bench.StartAsync(request, context.RequestAborted);
        if (started.Value is not { } build)
            return await ShowAsync(context, bench, builds, form.Refuse([.. started.Diagnostics.Select(Refusal.Sentence)]));
        PersonCookie.Remember(context, build.Builder);
        return new SeeOther(Addresses.Build(build.Id));
    }

    private static async Task<IResult> ShowAsync(HttpContext context, IBench bench, IBuildsDesk builds, Refusal? refusal)
    {
        var query = BuildsEndpoints.QueryOf(context.Request);
        var view = new FrontView(await builds.FindAsync(query, context.RequestAborted), query.Text.Trim(), bench.Machines(), PersonCookie.Read(context, ""), refusal) { Chosen = context.Request.Query["machine"].ToString() };
        return PageResult.Of<FrontPage>(view, refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }
}
