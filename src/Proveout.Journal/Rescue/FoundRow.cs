using System.Buffers.Binary;

namespace Proveout.Journal.Rescue;

/// <summary>A row that was found in a page.</summary>
/// <param name="Shape">Of which table it looks.</param>
/// <param name="Fields">Its fields as bytes; integers in eight bytes, big-endian. None of a file.</param>
internal sealed record FoundRow(RowShape Shape, IReadOnlyList<byte[]> Fields)
{
    /// <summary>Where the bytes of a file stand; null for every other row.</summary>
    public FoundFile? File { get; init; }

    public long Number(int field) => BinaryPrimitives.ReadInt64BigEndian(Fields[field]);
}
