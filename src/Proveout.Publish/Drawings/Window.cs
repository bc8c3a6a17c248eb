using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Chooses which contacts of a thing are drawn when it has more than fit.</summary>
internal static class Window
{
    /// <summary>Most contacts side by side whose names stay readable on a phone.</summary>
    public const int Capacity = 6;

    /// <summary>The thing with the touched contacts and as many of their nearest neighbours as fit.</summary>
    public static Thing Around(string designation, string name, List<Contact> all, IReadOnlyList<PlacedLead> leads, bool isConductor)
    {
        var touched = leads.Select(lead => all.FindIndex(contact => contact.Name == lead.Point.Place)).ToList();
        var drawn = Nearest(all.Count, touched);
        var contacts = drawn.Select(index => WithSurroundings(all, drawn, index));
        var touches = leads.Select((lead, order) => new Touch(lead.Lead, drawn.IndexOf(touched[order]), lead.Point.Side));
        return new(
            designation,
            name,
            contacts.ToValueList(),
            LeftOutAfter: drawn[^1] < all.Count - 1,
            touches.ToValueList(),
            isConductor);
    }

    private static List<int> Nearest(int count, List<int> touched) =>
        Enumerable.Range(0, count)
            .OrderBy(index => touched.Min(each => Math.Abs(each - index)))
            .ThenBy(index => index)
            .Take(Capacity)
            .Order()
            .ToList();

    private static Contact WithSurroundings(List<Contact> all, List<int> drawn, int index)
    {
        var leftOut = index > 0 && !drawn.Contains(index - 1);
        var another = index > 0 && all[index].Connector != all[index - 1].Connector;
        var isFirst = index == drawn[0];
        return all[index] with
        {
            GapBefore = leftOut || (another && !isFirst),
            LeftOutBefore = leftOut,
            ConnectorCutBefore = leftOut && !another,
            ConnectorCutAfter = index + 1 < all.Count && !drawn.Contains(index + 1) && all[index + 1].Connector == all[index].Connector,
        };
    }
}
