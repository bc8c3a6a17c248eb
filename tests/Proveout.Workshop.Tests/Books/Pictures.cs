using System.Text;
using StbImageWriteSharp;

namespace Proveout.Workshop.Tests.Books;

/// <summary>Photographs to try with.</summary>
internal static class Pictures
{
    /// <summary>A picture of four colours: red, green above; blue, white below.</summary>
    public static byte[] Jpeg(int width, int height)
    {
        var rgb = new byte[width * height * 3];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
                Corner(x < width / 2, y < height / 2).CopyTo(rgb.AsSpan(((y * width) + x) * 3));
        using var file = new MemoryStream();
        new ImageWriter().WriteJpg(rgb, width, height, ColorComponents.RedGreenBlue, file, 95);
        return file.ToArray();
    }

    /// <summary>The same with a segment APP1 as cameras write it (Exif 2.32, 4.5): how it was held, and who owns the camera.</summary>
    public static byte[] WithCameraData(byte[] jpeg, byte orientation, string owner)
    {
        byte[] name = [.. Encoding.ASCII.GetBytes(owner), 0];
        byte[] tiff =
        [
            .. "MM"u8, 0, 42, 0, 0, 0, 8, 0, 2,
            0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0,
            0x01, 0x3B, 0, 2, 0, 0, 0, (byte)name.Length, 0, 0, 0, 38,
            0, 0, 0, 0,
            .. name,
        ];
        byte[] body = [.. "Exif\0\0"u8, .. tiff];
        return [.. jpeg[..2], 0xFF, 0xE1, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body, .. jpeg[2..]];
    }

    private static byte[] Corner(bool isLeft, bool isAbove) => (isLeft, isAbove) switch
    {
        (true, true) => [255, 0, 0],
        (false, true) => [0, 255, 0],
        (true, false) => [0, 0, 255],
        _ => [255, 255, 255],
    };
}
