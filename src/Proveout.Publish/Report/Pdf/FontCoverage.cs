using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Proveout.Publish.Report;

/// <summary>Which characters the fonts can draw, read from their character maps (OpenType, ISO/IEC 14496-22, 5.2.1, table cmap, format 12).</summary>
internal sealed class FontCoverage
{
    private static readonly FontCoverage[] Fonts = [.. ReportFonts.Files.Select(file => new FontCoverage(ReportFonts.Read(file)))];
    private readonly List<(uint First, uint Last)> _ranges = [];

    private FontCoverage(ReadOnlySpan<byte> font)
    {
        var groups = FullMap(Table(font, "cmap"));
        for (var index = 0; index < (int)UInt32(groups, 12); index++)
            _ranges.Add((UInt32(groups, 16 + (12 * index)), UInt32(groups, 20 + (12 * index))));
    }

    /// <summary>The text with each character that a font lacks as its number, such as <c>[U+4E2D]</c>, so that none is lost.</summary>
    public static string Spell(string text)
    {
        var spelt = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            spelt.Append(Array.TrueForAll(Fonts, font => font.Has((uint)rune.Value))
                ? rune.ToString()
                : string.Create(CultureInfo.InvariantCulture, $"[U+{rune.Value:X4}]"));
        return spelt.ToString();
    }

    private bool Has(uint character) => _ranges.Exists(range => range.First <= character && character <= range.Last);

    private static ReadOnlySpan<byte> Table(ReadOnlySpan<byte> font, string tag)
    {
        for (var entry = 12; entry < 12 + (16 * UInt16(font, 4)); entry += 16)
            if (Encoding.ASCII.GetString(font.Slice(entry, 4)) == tag)
                return font.Slice((int)UInt32(font, entry + 8), (int)UInt32(font, entry + 12));
        throw new InvalidDataException($"The font has no table {tag}.");
    }

    private static ReadOnlySpan<byte> FullMap(ReadOnlySpan<byte> map)
    {
        for (var entry = 4; entry < 4 + (8 * UInt16(map, 2)); entry += 8)
            if (map[(int)UInt32(map, entry + 4)..] is var table && UInt16(table, 0) == 12)
                return table;
        throw new InvalidDataException("The font has no character map of format 12.");
    }

    private static ushort UInt16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static uint UInt32(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
}
