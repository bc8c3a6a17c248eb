namespace Proveout.Journal;

/// <summary>How much an archive may hold before it is refused, so that a small hostile file cannot fill memory.</summary>
/// <param name="MostArchiveBytes">Bytes of the archive itself.</param>
/// <param name="MostBytes">Bytes of everything in it, unpacked.</param>
/// <param name="MostFiles">Number of files in it.</param>
/// <param name="MostRatio">How many times larger than packed a file of more than a megabyte may be.</param>
public sealed record ArchiveLimits(long MostArchiveBytes, long MostBytes, int MostFiles, double MostRatio)
{
    /// <summary>Half a gigabyte of photographs and recordings, which is far more than a build has; text packs some twenty times.</summary>
    public static ArchiveLimits Usual { get; } = new(512L << 20, 512L << 20, 10_000, 200);
}
