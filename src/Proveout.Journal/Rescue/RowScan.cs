using System.Buffers.Binary;

namespace Proveout.Journal.Rescue;

/// <summary>
/// Finds rows of the journal's tables in page images by how they look, at every byte of every page: whatever else of the page is damaged, its kind,
/// its list of cells, the pages above it. What a row says is proven afterwards by its hash.
/// </summary>
/// <param name="pages">The file.</param>
internal sealed class RowScan(PageFile pages)
{
    public IEnumerable<FoundRow> All()
    {
        foreach (var page in pages.Images())
            for (var at = 0; at < page.Length; at++)
                if (RowHeader.At(page.AsSpan(at)) is { } header)
                    foreach (var row in Rows(page, at, header))
                        yield return row;
    }

    private IEnumerable<FoundRow> Rows(byte[] page, int at, RowHeader header)
    {
        if (header.Payload > Math.Min(pages.Bytes, int.MaxValue))
            yield break;
        var payload = (int)header.Payload;
        var most = header.Shape is RowShape.Entry or RowShape.End ? pages.Layout.MostInIndex : pages.Layout.MostInTable;
        var local = pages.Layout.Local(payload, most);
        if (at + local > page.Length)
            yield break;
        if (local == payload)
        {
            yield return new FoundRow(header.Shape, Fields(page.AsSpan(at, payload), header));
            yield break;
        }
        if (at + local + 4 > page.Length)
            yield break;
        var next = (int)BinaryPrimitives.ReadUInt32BigEndian(page.AsSpan(at + local));
        foreach (var isNewest in (bool[])[true, false])
            if (Whole(page.AsSpan(at, local).ToArray(), payload, next, isNewest) is { } whole)
                yield return new FoundRow(header.Shape, Fields(whole, header));
    }

    /// <summary>The payload put together with its overflow pages, either each as last written or each as it is in the file.</summary>
    private byte[]? Whole(byte[] local, int payload, int next, bool isNewest)
    {
        using var whole = new MemoryStream(Math.Min(payload, 1 << 20));
        whole.Write(local);
        while (whole.Length < payload)
        {
            var versions = pages.Versions(next);
            if ((isNewest ? versions.FirstOrDefault() : versions.LastOrDefault()) is not { } page)
                return null;
            whole.Write(page, 4, (int)Math.Min(pages.Layout.InOverflow, payload - whole.Length));
            next = (int)BinaryPrimitives.ReadUInt32BigEndian(page);
        }
        return whole.ToArray();
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
