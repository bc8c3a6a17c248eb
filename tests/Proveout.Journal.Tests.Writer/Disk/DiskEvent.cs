namespace Proveout.Journal.Trials.Disk;

/// <summary>Something that a disk was told, or that a user was.</summary>
public abstract record DiskEvent
{
    /// <summary>Bytes written at a place; they may be lost, torn or overtaken until the file is synced.</summary>
    public sealed record Written(string File, long Offset, byte[] Bytes) : DiskEvent;

    /// <summary>The file was cut to a length.</summary>
    public sealed record Cut(string File, long Length) : DiskEvent;

    /// <summary>All that was written to the file is on the disk; with its folder, also which files there are.</summary>
    public sealed record Synced(string File, bool WithFolder) : DiskEvent;

    /// <summary>The file was removed; with its folder synced, for good.</summary>
    public sealed record Removed(string File, bool WithFolder) : DiskEvent;

    /// <summary>A user was told that an entry is recorded.</summary>
    public sealed record Acknowledged(string Line) : DiskEvent;
}
