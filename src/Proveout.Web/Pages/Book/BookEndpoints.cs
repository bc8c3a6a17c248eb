using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Book;

/// <summary>Hands out the book of a machine or of a build.</summary>
internal static class BookEndpoints
{
    private const string NoMachine = "There is no such machine.";
    private const string NoBuild = "There is no such build, or its machine is not at hand.";

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/machines/{machineId}/book", (string machineId, IBench bench) =>
            OfMachine(machineId, bench) is { } view ? PageResult.Of<BookPage>(view) : TroubleEndpoints.Missing(NoMachine));
        routes.MapGet("/machines/{machineId}/book.zip", (string machineId, HttpRequest request, IBench bench, BookDesk books) =>
            Answer(books.OfMachine(machineId, Asked(request)), OfMachine(machineId, bench), request, NoMachine));
        routes.MapGet("/builds/{buildId}/book", async (string buildId, IBench bench, CancellationToken cancellation) =>
            await OfBuildAsync(buildId, bench, cancellation) is { } view ? PageResult.Of<BookPage>(view) : TroubleEndpoints.Missing(NoBuild));
        routes.MapGet("/builds/{buildId}/book.zip", async (string buildId, HttpRequest request, IBench bench, BookDesk books, CancellationToken cancellation) =>
            Answer(await books.OfBuildAsync(buildId, Asked(request), cancellation), await OfBuildAsync(buildId, bench, cancellation), request, NoBuild));
    }

    private static IResult Answer(Outcome<PublishedBook>? book, BookView? view, HttpRequest request, string missing) =>
        book is null || view is null ? TroubleEndpoints.Missing(missing)
        : book.Value is { } made ? FileResult.Of(BookDesk.Archive(made))
        : PageResult.Of<BookPage>(
            view with { Licence = Text(request, "licence"), Credit = Text(request, "credit"), WithNames = Text(request, "names").Length > 0, Problems = [.. book.Diagnostics.Select(Refusal.Sentence)] },
            StatusCodes.Status422UnprocessableEntity);

    private static BookRequest Asked(HttpRequest request) =>
        new(Text(request, "licence"), Text(request, "credit") is { Length: > 0 } credit ? [credit] : [], Text(request, "names").Length > 0, []);

    private static string Text(HttpRequest request, string field) => request.Query[field].ToString().Trim();

    private static BookView? OfMachine(string machineId, IBench bench) =>
        bench.Machines().FirstOrDefault(machine => machine.Id == machineId) is { } machine ? new(machine.Name, Addresses.Book(machineId), IsOfBuild: false, "", "", WithNames: false, []) : null;

    private static async Task<BookView?> OfBuildAsync(string buildId, IBench bench, CancellationToken cancellation) =>
        (await bench.BuildsAsync(cancellation)).FirstOrDefault(build => build.Id == buildId && build.MachineId.Length > 0) is { } build
            ? new($"{build.MachineName}, {build.Serial}", Addresses.BuildBook(buildId), IsOfBuild: true, "", "", WithNames: false, [])
            : null;
}
