using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Hosting;
using Proveout.Web.Access;
using Proveout.Web.Hosting.Watching;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Live;

/// <summary>Tells open pages that the journal grew (server-sent events, HTML standard 9.2).</summary>
internal static class LiveEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/builds/{buildId}/events", StreamAsync).Needs(Permission.See, isUse: false);

    private static async Task<IResult> StreamAsync(
        string buildId, long? after, HttpContext context, IBench bench, IHostApplicationLifetime lifetime)
    {
        if (await bench.StateAsync(buildId, context.RequestAborted) is null)
            return TroubleEndpoints.Missing("There is no such build.");
        // A browser that comes back after a break says what it saw last.
        var seen = long.TryParse(context.Request.Headers["Last-Event-ID"], out var last) ? last : after ?? 0;
        return TypedResults.ServerSentEvents(EventsAsync(bench, buildId, seen, () => StillIn.Asks(context), lifetime.ApplicationStopping, context.RequestAborted));
    }

    private static async IAsyncEnumerable<SseItem<long>> EventsAsync(
        IBench bench, string buildId, long seen, Func<bool> isStillIn, CancellationToken stopping, [EnumeratorCancellation] CancellationToken gone)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stopping, gone);
        // Sent at once, so that the browser knows that it is connected and a proxy in between does not hold the answer back.
        yield return new SseItem<long>(seen, "watching");
        using var counted = new Watcher();
        await using var watch = bench.WatchAsync(buildId, seen, either.Token).GetAsyncEnumerator(either.Token);
        while (await GrewAsync(watch) && isStillIn())
            yield return new SseItem<long>(watch.Current, "entered") { EventId = $"{watch.Current}" };
    }

    private sealed class Watcher : IDisposable
    {
        public Watcher() => BenchMeter.Watching.Add(1);

        public void Dispose() => BenchMeter.Watching.Add(-1);
    }

    private static async Task<bool> GrewAsync(IAsyncEnumerator<long> watch)
    {
        try
        {
            return await watch.MoveNextAsync();
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }
}
