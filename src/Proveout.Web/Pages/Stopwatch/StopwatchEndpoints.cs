using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;

namespace Proveout.Web.Pages.Stopwatch;

/// <summary>A stopwatch by the clock of the bench. Its times stand in the address, so nothing is kept and a reload changes nothing.</summary>
internal static class StopwatchEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.Stopwatch, Show);
        routes.MapGet($"{Addresses.Stopwatch}/start", (TimeProvider clock) => new SeeOther($"{Addresses.Stopwatch}?from={Now(clock)}"));
        routes.MapGet($"{Addresses.Stopwatch}/stop", (string? from, TimeProvider clock) => new SeeOther(StoppedAddress(from, clock)));
    }

    private static IResult Show(string? from, string? to, TimeProvider clock) =>
        PageResult.Of<StopwatchPage>(StopwatchView.Of(from, to, Now(clock)));

    private static string StoppedAddress(string? from, TimeProvider clock) =>
        StopwatchView.MomentOf(from) is { } start ? $"{Addresses.Stopwatch}?from={start}&to={Now(clock)}" : Addresses.Stopwatch;

    private static long Now(TimeProvider clock) => clock.GetUtcNow().ToUnixTimeMilliseconds();
}
