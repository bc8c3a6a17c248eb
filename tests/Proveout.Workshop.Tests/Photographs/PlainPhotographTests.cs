namespace Proveout.Workshop.Tests.Photographs;

public sealed class PlainPhotographTests
{
    private static readonly byte[] Place = "N52 E13, at home"u8.ToArray();

    private static readonly byte[] Scan = [0xFF, 0xDA, 0x00, 0x02, 0x12, 0x34, 0xFF, 0x00, 0xFF, 0xD0, 0x56];

    [Fact]
    public void Place_comment_and_what_follows_the_end_are_left_out_of_a_jpeg()
    {
        byte[] photo = [0xFF, 0xD8, .. Exif(1), .. Segment(0xFE, Place), .. Table, .. Scan, 0xFF, 0xD9, .. Place];
        Assert.Equal<byte>([0xFF, 0xD8, .. Table, .. Scan, 0xFF, 0xD9], PlainPhotograph.Of(photo)!);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(8)]
    public void The_way_up_stays_and_nothing_beside_it(int orientation)
    {
        var plain = PlainPhotograph.Of((byte[])[0xFF, 0xD8, .. Exif(orientation), .. Table, .. Scan, 0xFF, 0xD9])!;
        Assert.Equal(-1, plain.AsSpan().IndexOf(Place));
        Assert.Equal(orientation, ExifOrientation.Of(plain.AsSpan()[6..]));
        Assert.Equal(plain, PlainPhotograph.Of(plain));
    }

    [Fact]
    public void Only_chunks_that_the_picture_needs_stay_in_a_png()
    {
        byte[] signature = [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];
        var needed = (byte[])[.. Chunk("IHDR", new byte[13]), .. Chunk("IDAT", [1, 2, 3]), .. Chunk("IEND", [])];
        byte[] photo = [.. signature, .. Chunk("IHDR", new byte[13]), .. Chunk("eXIf", Place), .. Chunk("tEXt", Place), .. Chunk("IDAT", [1, 2, 3]), .. Chunk("IEND", []), .. Place];
        Assert.Equal<byte>([.. signature, .. needed], PlainPhotograph.Of(photo)!);
    }

    [Theory]
    [InlineData(6)]
    [InlineData(12)]
    [InlineData(40)]
    public void A_file_that_is_cut_short_is_none(int bytes)
    {
        byte[] photo = [0xFF, 0xD8, .. Exif(1), .. Table, .. Scan, 0xFF, 0xD9];
        Assert.Null(PlainPhotograph.Of(photo.AsMemory(0, bytes)));
    }

    private static byte[] Table => Segment(0xDB, [0, 1, 2, 3]);

    private static byte[] Segment(byte marker, byte[] body) => [0xFF, marker, 0, (byte)(body.Length + 2), .. body];

    private static byte[] Chunk(string name, byte[] body) => [0, 0, 0, (byte)body.Length, .. name.Select(sign => (byte)sign), .. body, 0, 0, 0, 0];

    // Little-endian, two entries: the way up, and where the picture was taken as text.
    private static byte[] Exif(int orientation) => Segment(
        0xE1,
        [
            .. "Exif\0\0II*\0"u8, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, (byte)orientation, 0, 0, 0, 0, 0, 0, 0, .. Place,
        ]);
}
