using System.Text;
using Proveout.Publish.Books;
using StbImageSharp;
using StbImageWriteSharp;

namespace Proveout.Publish.Tests.Books;

public sealed class PublishedPhotographTests
{
    // The picture is an L as it is to be seen: dark left column and dark foot, three wide and four high in blocks of 16 pixels.
    private const int Block = 16;
    private static readonly bool[,] Upright = { { true, false, false }, { true, false, false }, { true, false, false }, { true, true, false } };

    /// <summary>Which row and column of what is seen each row and column of the file is: Exif 2.32 (CIPA DC-008), 4.6.4, tag Orientation, from memory.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void A_photograph_comes_out_upright_however_the_camera_was_held(byte orientation)
    {
        var (rows, columns) = orientation >= 5 ? (3, 4) : (4, 3);
        var stored = Written(columns * Block, rows * Block, (x, y) => Seen(orientation, x / Block, y / Block));

        var published = PublishedPhotograph.Of(WithOrientation(stored, orientation))!;
        var image = ImageResult.FromMemory(published.Jpeg.ToArray(), StbImageSharp.ColorComponents.Grey);

        Assert.Equal((3 * Block, 4 * Block), (image.Width, image.Height));
        for (var row = 0; row < 4; row++)
            for (var column = 0; column < 3; column++)
                Assert.Equal(Upright[row, column], image.Data[((((row * Block) + (Block / 2)) * image.Width) + (column * Block) + (Block / 2))] < 128);
    }

    [Fact]
    public void Nothing_that_a_camera_wrote_beside_the_pixels_is_left()
    {
        var published = PublishedPhotograph.Of(WithOrientation(Written(32, 32, (_, _) => true), 1))!;
        Assert.DoesNotContain("Exif", Encoding.Latin1.GetString(published.Jpeg.Span), StringComparison.Ordinal);
    }

    [Fact]
    public void A_large_photograph_is_made_as_small_as_a_page_needs_and_keeps_its_shape()
    {
        var published = PublishedPhotograph.Of(Written(2800, 700, (x, _) => x < 1400))!;
        Assert.Equal((PublishedPhotograph.LongestSide, 350), (published.Width, published.Height));
    }

    [Fact]
    public void What_is_damaged_or_no_picture_is_not_published()
    {
        Assert.Null(PublishedPhotograph.Of("a text"u8.ToArray()));
        Assert.Null(PublishedPhotograph.Of(Written(32, 32, (_, _) => true).AsMemory(0, 60)));
        Assert.Null(PublishedPhotograph.Of(new byte[] { 0xFF, 0xD8, 0xFF }));
    }

    // 66 bytes, found by changing bytes: the decoder looked behind the end of the file for the next marker, for ever.
    [Fact]
    public async Task A_photograph_that_ends_where_its_next_part_should_begin_is_not_published()
    {
        byte[] cut = Convert.FromHexString("FFD8FFE1C9B3D500B082FF01120003000000010006000000000000FFFE00066869212149A2FA52A8158AD618C900224578696600004D4D002A000000080001FFE000");

        Assert.Null(await Task.Run(() => PublishedPhotograph.Of(cut)).WaitAsync(TimeSpan.FromSeconds(20)));
    }

    [Fact]
    public void A_small_file_that_claims_a_wall_of_pixels_is_not_unfolded()
    {
        // The frame header (ITU-T T.81, B.2.2) is given 30,000 by 3,000 points; what follows fills four by three.
        var photograph = Written(3, 4, (x, y) => Upright[y, x]);
        var frame = photograph.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xC0]);
        byte[] sides = [3000 >> 8, 3000 & 0xFF, 30_000 >> 8, 30_000 & 0xFF];
        sides.CopyTo(photograph, frame + 5);

        Assert.Null(PublishedPhotograph.Of(photograph));
    }

    // 54 kB, found by changing bytes: its one scan of half a million points was there 255 times, and took a second.
    [Fact]
    public void A_photograph_whose_scan_is_there_hundreds_of_times_is_not_unfolded()
    {
        var photograph = Written(1200, 1000, (x, y) => (x + y) % 2 == 0);
        var scan = photograph.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xDA]);
        var head = photograph.AsSpan(scan, 14).ToArray();
        byte[] often = [.. photograph[..^2], .. Enumerable.Repeat(head, 500).SelectMany(bytes => bytes), 0xFF, 0xD9];

        Assert.NotNull(PublishedPhotograph.Of(photograph));
        Assert.Null(PublishedPhotograph.Of(often));
    }

    private static bool Seen(int orientation, int x, int y) => orientation switch
    {
        1 => Upright[y, x],
        2 => Upright[y, 2 - x],
        3 => Upright[3 - y, 2 - x],
        4 => Upright[3 - y, x],
        5 => Upright[x, y],
        6 => Upright[x, 2 - y],
        7 => Upright[3 - x, 2 - y],
        _ => Upright[3 - x, y],
    };

    private static byte[] Written(int width, int height, Func<int, int, bool> isDark)
    {
        var rgb = new byte[width * height * 3];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
                rgb.AsSpan(((y * width) + x) * 3, 3).Fill(isDark(x, y) ? (byte)0 : (byte)255);
        using var file = new MemoryStream();
        new ImageWriter().WriteJpg(rgb, width, height, StbImageWriteSharp.ColorComponents.RedGreenBlue, file, 95);
        return file.ToArray();
    }

    private static byte[] WithOrientation(byte[] jpeg, byte orientation)
    {
        byte[] body = [.. "Exif\0\0"u8, .. "II"u8, 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0, 0, 0, 0];
        return [.. jpeg[..2], 0xFF, 0xE1, 0, (byte)(body.Length + 2), .. body, .. jpeg[2..]];
    }
}
