namespace Proveout.Web.Hosting;

/// <summary>How much a form may carry.</summary>
internal static class UploadLimits
{
    /// <summary>Largest photograph, in bytes: 12 MB.</summary>
    public const long PhotoBytes = 12_000_000;

    /// <summary>Largest request, in bytes. Larger than a photograph may be, so that a caption beside one that is too large is still read and kept.</summary>
    public const long RequestBytes = 40_000_000;

    /// <summary>Longest text in a field, in characters.</summary>
    public const int TextCharacters = 4000;
}
