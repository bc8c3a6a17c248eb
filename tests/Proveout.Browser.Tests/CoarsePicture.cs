using StbImageSharp;

namespace Proveout.Browser.Tests;

/// <summary>
/// A page as one sees it from across the room: how much ink each square of ten pixels holds, a hexadecimal digit each. Letters drawn a little otherwise
/// by another version of the browser do not show in it; what has moved, grown, vanished or changed its colour does.
/// </summary>
internal static class CoarsePicture
{
    private const int Side = 10;

    // A line of text covers a tenth to a fifth of its squares; with this factor that is a middle digit.
    private const double InkFactor = 3;

    // Squares along the edge of letters differ by this much when a word changes, and dates and numbers do.
    private const int Alike = 4;

    /// <summary>The first screen of a picture of a page, a line a row of squares.</summary>
    public static string Of(byte[] png, int height)
    {
        var image = ImageResult.FromMemory(png, ColorComponents.Grey);
        return string.Join('\n', Enumerable.Range(0, Math.Min(height, image.Height) / Side).Select(row =>
            string.Concat(Enumerable.Range(0, image.Width / Side).Select(column => Digit(image, row, column))))) + "\n";
    }

    /// <summary>Which share of two pictures' squares differs; 1 when one is larger than the other.</summary>
    public static double Difference(string one, string other) => one.Length != other.Length
        ? 1
        : one.Zip(other).Count(pair => pair.First != '\n' && Math.Abs(Convert.ToInt32($"{pair.First}", 16) - Convert.ToInt32($"{pair.Second}", 16)) >= Alike) / (double)one.Length;

    private static char Digit(ImageResult image, int row, int column)
    {
        var sum = 0;
        for (var y = row * Side; y < (row + 1) * Side; y++)
            for (var x = column * Side; x < (column + 1) * Side; x++)
                sum += 255 - image.Data[(y * image.Width) + x];
        return "0123456789abcdef"[Math.Min(15, (int)(InkFactor * 16 * sum / (255.0 * Side * Side)))];
    }
}
