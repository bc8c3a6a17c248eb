using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Proveout.Publish.Schedules;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace Proveout.Publish.Tests.Schedules;

/// <summary>Labels are read back by a reader of square codes that shares nothing with the writer.</summary>
public sealed partial class LabelTests
{
    private const int PixelsInMm = 25;

    [Theory]
    [InlineData("")]
    [InlineData("http://192.168.1.20:5080/machines/pennywort/")]
    public void A_reader_finds_in_each_code_what_the_label_means(string pages)
    {
        var labels = WireLabel.AllOf(Samples.Design("pennywort"), pages);
        var drawn = XDocument.Parse(HtmlLabels.Write(new("P", "", "", [], [], labels)).Replace("<!DOCTYPE html>", "", StringComparison.Ordinal))
            .Descendants()
            .Where(element => element.Name.LocalName == "path")
            .Select(path => Read(path.Attribute("d")!.Value));
        Assert.Equal(labels.Select(label => label.Code), drawn);
    }

    [Fact]
    public void A_conductor_has_a_label_for_each_end_that_names_it_first()
    {
        var design = Samples.Design("pennywort");
        var labels = WireLabel.AllOf(design, "http://bench/machines/p");
        Assert.Equal(design.Conductors.SelectMany(conductor => new[] { conductor.From.ToString(), conductor.To.ToString() }), labels.Select(label => label.Here));
        Assert.Equal($"http://bench/machines/p/wires/{design.Conductors[0].Id}", labels[0].Code);
    }

    private static string? Read(string path)
    {
        const int size = 17 * PixelsInMm;
        var pixels = Enumerable.Repeat((byte)255, size * size).ToArray();
        foreach (var run in Runs().Matches(path).Select(match => match.Groups.Values.Skip(1).Select(group => double.Parse(group.Value, CultureInfo.InvariantCulture)).ToArray()))
            for (var y = Pixel(run[1]); y < Pixel(run[1] + run[3]); y++)
                for (var x = Pixel(run[0]); x < Pixel(run[0] + run[2]); x++)
                    pixels[(y * size) + x] = 0;
        var source = new RGBLuminanceSource(pixels, size, size, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)), new Dictionary<DecodeHintType, object> { [DecodeHintType.PURE_BARCODE] = true })?.Text;
    }

    private static int Pixel(double mm) => (int)Math.Round(mm * PixelsInMm);

    [GeneratedRegex(@"M([0-9.]+) ([0-9.]+)h([0-9.]+)v([0-9.]+)h-[0-9.]+z")]
    private static partial Regex Runs();
}
