using System.Buffers.Binary;
using System.Security.Cryptography;

namespace Proveout.Journal.Rescue;

/// <summary>
/// Finds rows of the journal's tables in page images by how they look, at every byte of every page: whatever else of the page is damaged, its kind,
/// its list of cells, the pages above it. What a row says is proven afterwards by its hash.
/// </summary>
/// <param name="pages">The file.</param>
/// <param name="chain">Puts rows of it together.</param>
/// <param name="take">Takes each row; the same row in another image of its page is handed over once.</param>
internal sealed class RowScan(PageFile pages, RowChain chain, Action<FoundRow> take)
{
    private readonly HashSet<UInt128> _seen = [];

    public void Run()
    {
        foreach (var page in pages.Images())
            for (var at = 0; at < page.Length; at++)
                if (RowHeader.At(page.AsSpan(at)) is { } header)
                    TakeAt(page.AsSpan(at), header);
    }

    private void TakeAt(ReadOnlySpan<byte> rest, RowHeader header)
    {
        if (header.Payload > Math.Min(pages.Bytes, int.MaxValue))
            return;
        var payload = (int)header.Payload;
        var most = header.Shape is RowShape.Entry or RowShape.End ? pages.Layout.MostInIndex : pages.Layout.MostInTable;
        var local = pages.Layout.Local(payload, most);
        var isWhole = local == payload;
        if ((isWhole ? local : local + 4) > rest.Length || !IsNew(rest[..(isWhole ? local : local + 4)]))
            return;
        if (isWhole)
        {
            take(Row(rest[..payload], header, rest[..local], next: 0, isNewest: true));
            return;
        }
        var next = (int)BinaryPrimitives.ReadUInt32BigEndian(rest[local..]);
        TakeChain(rest[..local], header, next, isNewest: true);
        // The other versions of its pages, where there are any.
        if (chain.HadTwo)
            TakeChain(rest[..local], header, next, isNewest: false);
    }

    private void TakeChain(ReadOnlySpan<byte> local, RowHeader header, int next, bool isNewest)
    {
        if (chain.Whole(local, (int)header.Payload, next, isNewest) is { Length: > 0 } whole)
            take(Row(whole, header, local, next, isNewest));
    }

    // The same bytes with the same page to go on in are the same row.
    private bool IsNew(ReadOnlySpan<byte> row)
    {
        Span<byte> digest = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(row, digest);
        return _seen.Add(BinaryPrimitives.ReadUInt128BigEndian(digest));
    }

    private static FoundRow Row(ReadOnlySpan<byte> payload, RowHeader header, ReadOnlySpan<byte> local, int next, bool isNewest)
    {
        if (header.Shape != RowShape.File)
            return new FoundRow(header.Shape, Fields(payload, header));
        var length = (int)RowHeader.Size(header.Types[1]);
        var start = payload.Length - length;
        return new FoundRow(header.Shape, []) { File = new FoundFile(Fingerprint.OfBytes(payload.Slice(start, length)), local.ToArray(), payload.Length, start, length, next, isNewest) };
    }

    private static byte[][] Fields(ReadOnlySpan<byte> payload, RowHeader header)
    {
        var fields = new byte[header.Types.Length][];
        var at = header.Length;
        for (var index = 0; index < fields.Length; index++)
        {
            var type = header.Types[index];
            var size = (int)RowHeader.Size(type);
            fields[index] = type < 12 ? Number(payload.Slice(at, size), type) : payload.Slice(at, size).ToArray();
            at += size;
        }
        return fields;
    }

    private static byte[] Number(ReadOnlySpan<byte> bytes, long type)
    {
        // Types 8 and 9 are the numbers 0 and 1 without any byte.
        long value = type == 9 ? 1 : bytes.Length > 0 && bytes[0] >= 0x80 ? -1 : 0;
        foreach (var each in bytes)
            value = (value << 8) | each;
        var number = new byte[8];
        BinaryPrimitives.WriteInt64BigEndian(number, value);
        return number;
    }
}
