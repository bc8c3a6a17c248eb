using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Shares in words that claim no more than is known.</summary>
public static class ShareWords
{
    /// <summary>A share from 0 to 1 as a percentage.</summary>
    public static string Of(double share) => share switch
    {
        < 0.01 => "under 1 %",
        > 0.99 and < 1 => "over 99 %",
        _ => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %"),
    };
}
