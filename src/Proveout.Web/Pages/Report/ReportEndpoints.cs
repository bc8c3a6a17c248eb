using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Report;

/// <summary>Hands out the report of a build, for paper.</summary>
internal static class ReportEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, ReportCase reports) =>
        routes.MapGet("/builds/{buildId}/report.pdf", async (string buildId, CancellationToken cancellation) =>
            await reports.PdfAsync(buildId, cancellation) is { } document
                ? TypedResults.Bytes(document, "application/pdf", "record.pdf")
                : TroubleEndpoints.Missing("There is no such build."));
}
