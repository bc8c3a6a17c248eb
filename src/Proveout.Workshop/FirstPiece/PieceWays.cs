using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Ways of making a test piece, by name.</summary>
public static class PieceWays
{
    /// <summary>Name of the field and of the option.</summary>
    public const string Name = "made";

    /// <summary>Names, with what each is.</summary>
    public static IReadOnlyList<(string Name, string Words)> All { get; } =
    [
        ("printed", "Printed in layers"), ("milled", "Milled from stock"), ("dispensed", "Laid as a bead of paste"),
    ];

    internal static PieceMaking? Find(string text, List<Diagnostic> problems)
    {
        var name = text.Trim();
        if (name.Length == 0)
            return PieceMaking.Printed;
        if (All.Index().FirstOrDefault(way => way.Item.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is { Item.Name: not null } way)
            return (PieceMaking)way.Index;
        problems.Add(new("unknown-way", new SourcePlace("How it is made", 0, 0), $"{Quote.Of(name)} is no way of making it.", $"Write one of {string.Join(", ", All.Select(each => each.Name))}."));
        return null;
    }
}
