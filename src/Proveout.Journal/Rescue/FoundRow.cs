using System.Buffers.Binary;

namespace Proveout.Journal.Rescue;

/// <summary>A row that was found in a page.</summary>
/// <param name="Shape">Of which table it looks.</param>
/// <param name="Fields">Its fields as bytes; integers in eight bytes, big-endian.</param>
internal sealed record FoundRow(RowShape Shape, IReadOnlyList<byte[]> Fields)
{
    public long Number(int field) => BinaryPrimitives.ReadInt64BigEndian(Fields[field]);
}
