namespace Proveout.Publish.Books;

/// <summary>A picture unfolded: red, green and blue of each pixel, row by row from the top.</summary>
/// <param name="Width">Width in pixels.</param>
/// <param name="Height">Height in pixels.</param>
/// <param name="Rgb">Three bytes a pixel.</param>
internal sealed record Pixels(int Width, int Height, byte[] Rgb)
{
    private const int Colours = 3;

    /// <summary>A picture with transparency, laid on white as paper would show it.</summary>
    public static Pixels OnWhite(int width, int height, byte[] rgba)
    {
        var rgb = new byte[width * height * Colours];
        for (var pixel = 0; pixel < width * height; pixel++)
            for (var colour = 0; colour < Colours; colour++)
            {
                var (value, opacity) = (rgba[(pixel * 4) + colour], rgba[(pixel * 4) + 3]);
                rgb[(pixel * Colours) + colour] = (byte)(((value * opacity) + (255 * (255 - opacity)) + 127) / 255);
            }

        return new(width, height, rgb);
    }

    /// <summary>The picture made small enough that its longest side fits; each new pixel is the mean of those that it covers.</summary>
    public Pixels Within(int longest)
    {
        if (Math.Max(Width, Height) <= longest)
            return this;
        var (width, height) = Width >= Height
            ? (longest, Math.Max(1, (int)Math.Round((double)Height * longest / Width)))
            : (Math.Max(1, (int)Math.Round((double)Width * longest / Height)), longest);
        var rgb = new byte[width * height * Colours];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
                for (var colour = 0; colour < Colours; colour++)
                    rgb[(((y * width) + x) * Colours) + colour] = Mean(Covered(x, width, Width), Covered(y, height, Height), colour);
        return new(width, height, rgb);
    }

    /// <summary>The picture as it was meant to be seen.</summary>
    public Pixels Turned(PhotographTurn turn)
    {
        if (turn == PhotographTurn.None)
            return this;
        var (width, height) = turn.ExchangesSides ? (Height, Width) : (Width, Height);
        var rgb = new byte[Rgb.Length];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
            {
                var (fromX, fromY) = turn.From(x, y, Width, Height);
                Rgb.AsSpan(((fromY * Width) + fromX) * Colours, Colours).CopyTo(rgb.AsSpan(((y * width) + x) * Colours));
            }

        return new(width, height, rgb);
    }

    private static (int First, int Last) Covered(int at, int size, int sourceSize)
    {
        var first = (int)((long)at * sourceSize / size);
        return (first, Math.Max(first, (int)((long)(at + 1) * sourceSize / size) - 1));
    }

    private byte Mean((int First, int Last) across, (int First, int Last) down, int colour)
    {
        var (sum, count) = (0L, 0L);
        for (var y = down.First; y <= down.Last; y++)
            for (var x = across.First; x <= across.Last; x++)
                (sum, count) = (sum + Rgb[(((y * Width) + x) * Colours) + colour], count + 1);
        return (byte)((sum + (count / 2)) / count);
    }
}
