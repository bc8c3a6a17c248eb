namespace Proveout.Journal.Tests.Chain;

/// <summary>A change to one cell of what is stored, made past the journal.</summary>
/// <param name="Place">Which cell.</param>
/// <param name="Row">Chooses the entry, from 0, modulo the number of entries.</param>
/// <param name="How">What is done to its bytes.</param>
/// <param name="Position">Chooses the byte, modulo the length.</param>
/// <param name="Value">1 to 255: what the byte is combined with, or becomes.</param>
public sealed record Forgery(ForgedPlace Place, int Row, ForgedHow How, int Position, byte Value)
{
    /// <summary>The bytes after the change; never those before it.</summary>
    public byte[] Apply(byte[] bytes)
    {
        if (bytes.Length == 0 || How == ForgedHow.InsertByte)
            return [.. bytes[..(Position % (bytes.Length + 1))], Value, .. bytes[(Position % (bytes.Length + 1))..]];
        var at = Position % bytes.Length;
        return How == ForgedHow.DropByte
            ? [.. bytes[..at], .. bytes[(at + 1)..]]
            : [.. bytes[..at], (byte)(bytes[at] ^ Value), .. bytes[(at + 1)..]];
    }
}

public enum ForgedHow
{
    ChangeByte,
    InsertByte,
    DropByte,
}

/// <summary>A stored text or blob, by table and column.</summary>
/// <param name="Table">The table.</param>
/// <param name="Column">The column.</param>
public sealed record ForgedPlace(string Table, string Column)
{
    /// <summary>Every text and every blob that the journal stores.</summary>
    public static IReadOnlyList<ForgedPlace> All { get; } =
    [
        .. Of("builds", "id", "serial", "machine_name", "machine_fingerprint", "builder", "started", "hash"),
        .. Of("entries", "build_id", "key", "recorded", "person", "instrument", "content", "previous_hash", "hash"),
        .. Of("ends", "build_id", "hash"),
        .. Of("photos", "sha256", "bytes"),
    ];

    private static IEnumerable<ForgedPlace> Of(string table, params string[] columns) =>
        columns.Select(column => new ForgedPlace(table, column));
}
