using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Devices;

/// <summary>What the page of a person's devices shows.</summary>
public sealed record DevicesView(SignedIn Who, IReadOnlyList<AccessSession> Devices, Refusal? Refusal);
