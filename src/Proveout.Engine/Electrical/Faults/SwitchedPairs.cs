using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Two terminals of a part between which its contacts and fuses stand.</summary>
/// <param name="A">One terminal.</param>
/// <param name="B">The other.</param>
internal sealed record SwitchedPairs(string A, string B)
{
    /// <summary>True when these are the two terminals.</summary>
    public bool Joins(string one, string two) => (A == one && B == two) || (A == two && B == one);

    /// <summary>Every such pair of a part: straight, or by one inner node as in a circuit-breaker.</summary>
    public static IEnumerable<SwitchedPairs> Of(Part part)
    {
        var links = part.Type.Circuit.Where(element => element is Contact or Fuse).ToArray();
        var straight =
            from link in links
            where IsTerminal(part, link.A) && IsTerminal(part, link.B)
            select new SwitchedPairs(link.A, link.B);
        var byInnerNode =
            from one in links
            from two in links
            where one.B == two.A && !IsTerminal(part, one.B) && IsTerminal(part, one.A) && IsTerminal(part, two.B)
            select new SwitchedPairs(one.A, two.B);
        return straight.Concat(byInnerNode);
    }

    private static bool IsTerminal(Part part, string node) => part.Type.FindTerminal(node) is not null;
}
