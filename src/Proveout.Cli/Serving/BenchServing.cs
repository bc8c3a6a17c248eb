using Microsoft.AspNetCore.Builder;
using Proveout.Web;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Serves the bench until it is told to stop. A class of its own, so that no other command loads the web server.</summary>
internal static class BenchServing
{
    // Longer than the slowest page, shorter than the 30 s that a service manager waits (deploy/proveout.service).
    private static readonly TimeSpan GraceForRequests = TimeSpan.FromSeconds(20);

    public static async Task<int> RunAsync(Terminal terminal, Workplace workplace, BenchHostOptions options, OpeningWords words, AccessKeeping keeping, CancellationToken cancellation)
    {
        var opening = words.IsClosed ? null : new NetworkOpening(keeping.Store, words.Hosts) { Tally = keeping.Tally, Proxies = words.Proxies };
        if (opening is not null && words.Certificate is { } file)
        {
            var certificate = await CertificateFile.ReadAsync(terminal, file, words.CertificateKey, cancellation);
            if (certificate.Value is null)
                return terminal.Refuse(certificate.Diagnostics);
            opening = opening with { Certificate = certificate.Value };
        }

        using var signals = new StopSignals();
        await using var app = BenchHost.Build(options with { Address = words.Address, Opening = opening }, workplace.Desks);
        try
        {
            await app.StartAsync(cancellation);
        }
        catch (IOException)
        {
            return terminal.Refuse("port-taken", $"port {options.Port}", "Another program listens on this port, or this computer has no such address.", "Give another one, or leave --port out for a free one.");
        }

        // Beside the first page; whoever needs it sooner waits for it, and is told if it fails.
        _ = workplace.Desks.Builds.PrepareAsync(cancellation);
        if (opening is null)
            SayClosed(terminal, app.Urls.First());
        else
            SayOpened(terminal, app.Urls.First(), words, keeping.Store);
        var exit = await signals.Told;
        await StopAsync(app, signals);
        return exit;
    }

    private static void SayClosed(Terminal terminal, string address)
    {
        terminal.Say($"Bench: {address.TrimEnd('/')}/");
        terminal.Say("Open this address in a browser on this computer. Ctrl-C ends it; every entry is on the disk already.");
    }

    private static void SayOpened(Terminal terminal, string address, OpeningWords words, IAccessStore store)
    {
        if (words.IsReadable)
            terminal.Complain(
                "Caution: without a certificate everybody on the network can read and change what goes to and fro, passwords and join codes too. Give --certificate, or listen on this computer alone behind a proxy that speaks HTTPS and is named with --proxy.");
        var bound = new Uri(address);
        var host = words.Names.Count > 0 ? words.Names[0] : OpeningWords.HostOf(words.Address);
        terminal.Say($"Bench: {bound.Scheme}://{host}:{bound.Port}/");
        terminal.Say("Everybody has to sign in. Ctrl-C ends it; every entry is on the disk already.");
        if (store.Read().People.Count == 0)
            SayNobody(terminal, store);
    }

    private static void SayNobody(Terminal terminal, IAccessStore store)
    {
        var (with, before) = store is AccessDatabase ? (" --journal ADDRESS", PeopleOfBefore()) : ("", 0);
        terminal.Say($"Nobody can sign in yet. On this computer: `proveout people add NAME --role builder{with}`, or for a phone `proveout people join NAME --role builder{with}`.");
        if (before > 0)
            terminal.Say($"The file of before, {AccessFile.Beside(Places.Journal).Place}, has {before} {(before == 1 ? "person" : "people")}: `proveout people take-in{with}` takes them in, as they are.");
    }

    // Until a database kept people of its own, they lay in a file in the person's own folder, whichever the database was. One that cannot be read has nobody to be taken in.
    private static int PeopleOfBefore()
    {
        try
        {
            return AccessFile.Beside(Places.Journal).Read().People.Count;
        }
        catch (AccessException)
        {
            return 0;
        }
    }

    /// <summary>Takes no new requests, ends the event streams, and lets requests under way finish.</summary>
    private static async Task StopAsync(WebApplication app, StopSignals signals)
    {
        using var grace = CancellationTokenSource.CreateLinkedTokenSource(signals.Again);
        grace.CancelAfter(GraceForRequests);
        try
        {
            await app.StopAsync(grace.Token);
        }
        catch (OperationCanceledException)
        {
            // A request was cut off. What it had entered is on the disk; what it had not, it did not acknowledge.
        }
    }
}
