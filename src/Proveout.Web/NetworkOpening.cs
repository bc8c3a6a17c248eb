using System.Net;
using System.Security.Cryptography.X509Certificates;
using Proveout.Workshop;

namespace Proveout.Web;

/// <summary>A bench that others than this computer may call; nobody gets in without signing in.</summary>
/// <param name="Store">Who may come in.</param>
/// <param name="Names">Names and addresses that the bench may be called by; a request for any other is turned away.</param>
public sealed record NetworkOpening(IAccessStore Store, IReadOnlyList<string> Names)
{
    /// <summary>Where tries to come in are counted; by this process alone when not given.</summary>
    public IAttemptTally Tally { get; init; } = new ProcessTally();

    /// <summary>Proxies whose word on the caller's address and on TLS is taken; nobody else's is.</summary>
    public IReadOnlyList<IPAddress> Proxies { get; init; } = [];

    /// <summary>Certificate with its private key; without one the bench speaks plain HTTP.</summary>
    public X509Certificate2? Certificate { get; init; }

    /// <summary>The clock of sessions and codes.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
