using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Publish.Schedules;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Paper;

/// <summary>What to work from on paper: schedules and labels.</summary>
internal static class PaperEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        var paper = routes.MapGroup("/machines/{machineId}/paper");
        paper.MapGet("", (string machineId, HttpRequest request, IDesignDesk desk) => Answer(machineId, request, desk, book => PageResult.Of<PaperPage>(new PaperView(machineId, book))));
        paper.MapGet("/schedules.pdf", (string machineId, HttpRequest request, IDesignDesk desk) => Answer(machineId, request, desk, book => Pdf(book, "schedules", PdfSchedules.Write)));
        paper.MapGet("/labels.pdf", (string machineId, HttpRequest request, IDesignDesk desk) => Answer(machineId, request, desk, book => Pdf(book, "labels", PdfLabels.Write)));
        paper.MapGet("/{schedule}.csv", (string machineId, string schedule, HttpRequest request, IDesignDesk desk) => Answer(machineId, request, desk, book => Csv(book, schedule)));
    }

    private static IResult Answer(string machineId, HttpRequest request, IDesignDesk desk, Func<ScheduleBook, IResult> show) =>
        desk.Schedules(machineId, $"{request.Scheme}://{request.Host}{Addresses.Machine(machineId)}") is { } book
            ? show(book)
            : TroubleEndpoints.Missing("There is no such machine.");

    private static IResult Pdf(ScheduleBook book, string name, Action<ScheduleBook, DateTimeOffset, Stream> write)
    {
        var document = new MemoryStream();
        write(book, DateTimeOffset.UnixEpoch, document);
        document.Position = 0;
        return TypedResults.Stream(document, "application/pdf", $"{name}.pdf");
    }

    private static IResult Csv(ScheduleBook book, string schedule) =>
        book.Schedules.FirstOrDefault(candidate => candidate.Id == schedule) is { } found
            ? TypedResults.Bytes(Encoding.UTF8.GetBytes(CsvSchedule.Write(found)), "text/csv; charset=utf-8", $"{schedule}.csv")
            : TroubleEndpoints.Missing("There is no such schedule.");
}
