using Proveout.Web.Hosting;

namespace Proveout.Web.Pages.SignIn;

/// <summary>What the way in shows.</summary>
/// <param name="To">The page to go to then; an address of this bench.</param>
/// <param name="Name">The name as typed.</param>
/// <param name="Code">The join code that the address carried.</param>
/// <param name="Refusal">Why nobody came in.</param>
public sealed record SignInView(string To, string Name, string Code, Refusal? Refusal)
{
    /// <summary>What follows a form that came from nobody.</summary>
    public static SignInView Late { get; } = new(Addresses.Front, "", "", null) { IsLate = true };

    /// <summary>Whether somebody here has a second factor, so that there is a field for its code.</summary>
    public bool AsksForCode { get; init; }

    /// <summary>True after a form that was not taken, because the session had ended.</summary>
    public bool IsLate { get; init; }
}
