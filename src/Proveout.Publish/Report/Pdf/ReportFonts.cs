using System.Reflection;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Proveout.Publish.Report;

/// <summary>Gives the PDF library the two font files that travel with this assembly, so that no font of the computer is needed.</summary>
internal sealed class ReportFonts : IFontResolver
{
    private const string Family = "DejaVu Sans Condensed";
    private const string Regular = "DejaVuSansCondensed.ttf";
    private const string Bold = "DejaVuSansCondensed-Bold.ttf";
    private static readonly Lock Gate = new();

    private ReportFonts()
    {
    }

    /// <summary>A font of a size in points.</summary>
    public static XFont Make(double size, bool bold = false)
    {
        lock (Gate)
            GlobalFontSettings.FontResolver ??= new ReportFonts();
        return new(Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
    }

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) => new(bold ? Bold : Regular);

    /// <summary>The font files.</summary>
    public static IReadOnlyList<string> Files { get; } = [Regular, Bold];

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => Read(faceName);

    /// <summary>The content of a font file.</summary>
    public static byte[] Read(string faceName)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(faceName)!;
        var font = new byte[stream.Length];
        stream.ReadExactly(font);
        return font;
    }
}
