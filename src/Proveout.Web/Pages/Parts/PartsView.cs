using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Parts;

/// <summary>What the page of parts shows.</summary>
public sealed record PartsView(BenchState State, IReadOnlyList<ArrivedPart> Parts, string Person, Refusal? Refusal)
{
    public string Address => Addresses.Parts(State.Build.Id);

    public int CountOf(string came) => Parts.Count(part => part.Came == came);
}
