using QRCoder;

namespace Proveout.Publish.Schedules;

/// <summary>A square code, ISO/IEC 18004, that a telephone reads.</summary>
public static class SquareCode
{
    /// <summary>The dark modules of a text, row by row from the top; four light modules at each edge are part of it.</summary>
    public static bool[][] Of(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        return [.. data.ModuleMatrix.Select(row => row.Cast<bool>().ToArray())];
    }
}
