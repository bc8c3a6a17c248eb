using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.SecondFactor;

/// <summary>What the page of a person's second factor shows.</summary>
/// <param name="Standing">How it stands.</param>
/// <param name="Refusal">Why nothing was changed.</param>
public sealed record SecondFactorView(SecondFactorStanding Standing, Refusal? Refusal)
{
    /// <summary>A new key, shown this once; null on every other page.</summary>
    public NewKey? Key { get; init; }

    /// <summary>New codes on paper, shown this once; empty on every other page.</summary>
    public IReadOnlyList<string> Codes { get; init; } = [];
}

/// <summary>A new key as a person or a camera takes it.</summary>
/// <param name="Grouped">To be typed.</param>
/// <param name="Address">To be opened on the device that has the authenticator.</param>
public sealed record NewKey(string Grouped, string Address);
