using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Front;

/// <summary>The front page: builds in work, and the form that starts one.</summary>
internal static class FrontEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.Front, (HttpContext context, IBench bench) => ShowAsync(context, bench, null));
        routes.MapPost(Addresses.Front, StartAsync);
    }

    private static async Task<IResult> StartAsync(HttpContext context, IBench bench)
    {
        var form = await PostedForm.ReadAsync(context);
        if (form.Problems.Count > 0)
            return await ShowAsync(context, bench, form.Refuse(form.Problems));
        if (form.Text("machine").Length == 0)
            return await ShowAsync(context, bench, form.Refuse(["No machine is chosen. Choose one of the machines below."]));
        var request = new StartBuild(form.Text("machine"), form.Text("serial"), form.Person("", "builder"), form.Text("instrument"));
        var started = await bench.StartAsync(request, context.RequestAborted);
        if (started.Value is not { } build)
            return await ShowAsync(context, bench, form.Refuse([.. started.Diagnostics.Select(Refusal.Sentence)]));
        PersonCookie.Remember(context, build.Builder);
        return new SeeOther(Addresses.Build(build.Id));
    }

    private static async Task<IResult> ShowAsync(HttpContext context, IBench bench, Refusal? refusal)
    {
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var view = new FrontView(builds, bench.Machines(), PersonCookie.Read(context, ""), refusal);
        return PageResult.Of<FrontPage>(view, refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }
}
