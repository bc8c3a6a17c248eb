using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>What an address asks of the person who calls it.</summary>
internal sealed record NeedsPermission(Permission Permission)
{
    /// <summary>False for what a page asks for by itself, which keeps no session alive.</summary>
    public bool IsUse { get; init; } = true;
}
