using System.Globalization;
using PdfSharp.Drawing;

namespace Proveout.Publish.Tests.Drawings;

/// <summary>Holds what every drawing on paper must keep: words that can be read.</summary>
internal static class LabelReading
{
    // Rounding of widths and places; far below a stroke.
    private const double Tolerance = 0.05;

    public static void AssertApart(SvgReading sheet)
    {
        var boxes = sheet.Boxes();
        var page = sheet.ViewBox();
        Assert.NotEmpty(boxes);
        // Smallest letters that are read at A4.
        Assert.All(sheet.Root.Descendants(SvgReading.Svg + "text"), text => Assert.True(double.Parse(text.Attribute("font-size")!.Value, CultureInfo.InvariantCulture) >= 2.2));
        foreach (var (text, box) in boxes)
        {
            Assert.True(page.Contains(box), $"{text} leaves the sheet: {box}");
        }

        for (var one = 0; one < boxes.Count; one++)
            for (var other = one + 1; other < boxes.Count; other++)
                Assert.False(Overlap(boxes[one].Box, boxes[other].Box), $"{boxes[one].Text} and {boxes[other].Text} overlap at {boxes[one].Box}, {boxes[other].Box}");
    }

    private static bool Overlap(XRect one, XRect other) =>
        Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left) > Tolerance && Math.Min(one.Bottom, other.Bottom) - Math.Max(one.Top, other.Top) > Tolerance;
}
