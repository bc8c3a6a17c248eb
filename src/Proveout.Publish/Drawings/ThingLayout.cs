namespace Proveout.Publish.Drawings;

/// <summary>Where the contacts of a thing stand, and the rows of it, from its upper edge. Unit: one CSS pixel of a phone.</summary>
internal sealed class ThingLayout
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 360;

    /// <summary>Left end of everything inside an outline.</summary>
    public const double Left = 18;

    /// <summary>Right end of everything inside an outline.</summary>
    public const double Right = Width - Left;

    /// <summary>Height of a row of contacts with their names.</summary>
    public const double RowHeight = 40;

    /// <summary>Height of the tag of a lead.</summary>
    public const double TagHeight = 22;

    private const double HeaderHeight = 28;
    private const double LeaderHeight = 20;
    private const double GapWidth = 16;
    private const double WidestSlot = 81;
    private const double WidestEnd = 150;
    private readonly double[] _centres;

    /// <summary>Lays a thing out with its upper edge at a height.</summary>
    public ThingLayout(Thing thing, double top)
    {
        Top = top;
        var gaps = thing.Contacts.Count(contact => contact.GapBefore);
        var gapsWidth = (gaps + (thing.LeftOutAfter ? 1 : 0)) * GapWidth;
        SlotWidth = Math.Min(thing.IsConductor ? WidestEnd : WidestSlot, (Right - Left - gapsWidth) / thing.Contacts.Count);
        _centres = new double[thing.Contacts.Count];
        var x = (Width - (SlotWidth * thing.Contacts.Count) - gapsWidth) / 2;
        for (var index = 0; index < _centres.Length; index++)
        {
            x += thing.Contacts[index].GapBefore ? GapWidth : 0;
            _centres[index] = x + (SlotWidth / 2);
            x += SlotWidth;
        }

        Bottom = thing.Apart ? PlugBottom + StubHeight + 32 : TagTop + TagHeight;
    }

    /// <summary>Length of the conductors drawn out of a plug.</summary>
    public const double StubHeight = 10;

    /// <summary>Upper edge.</summary>
    public double Top { get; }

    /// <summary>Lower end of everything that belongs to the thing.</summary>
    public double Bottom { get; }

    /// <summary>Width for one contact and its name.</summary>
    public double SlotWidth { get; }

    /// <summary>Base line of the header.</summary>
    public double HeaderLine => Top + 19;

    /// <summary>Upper edge of the row of contacts that stay on the part.</summary>
    public double RowTop => Top + HeaderHeight;

    /// <summary>Lower edge of that row, and of the part.</summary>
    public double RowBottom => RowTop + RowHeight;

    /// <summary>Upper edge of the tags.</summary>
    public double TagTop => RowBottom + LeaderHeight;

    /// <summary>Upper edge of a plug that is pulled off.</summary>
    public double PlugTop => TagTop + TagHeight + LeaderHeight;

    /// <summary>Lower edge of it.</summary>
    public double PlugBottom => PlugTop + RowHeight;

    /// <summary>Middle of a contact.</summary>
    public double Centre(int contact) => _centres[contact];

    /// <summary>Height of the metal to touch: near the lower edge of the part, near the upper edge of the plug.</summary>
    public double ContactHeight(bool onPlug) => onPlug ? PlugTop + 12 : RowBottom - 12;

    /// <summary>Base line of the names of contacts.</summary>
    public double NameLine(bool onPlug) => onPlug ? PlugBottom - 6 : RowTop + 12;
}
