using System.Buffers.Binary;

namespace Proveout.Journal.Rescue;

/// <summary>The numbers of a database file's layout that follow from its page size (sqlite.org/fileformat2.html, 1.6, cell payload).</summary>
/// <param name="PageSize">Bytes of a page.</param>
internal sealed record PageLayout(int PageSize)
{
    /// <summary>SQLite's own default, which journals have; assumed where the header cannot be read.</summary>
    public const int UsualPageSize = 4096;

    /// <summary>The most payload that a row of a table with row numbers keeps within its page.</summary>
    public int MostInTable => PageSize - 35;

    /// <summary>The most payload that a row of an index, or of a table without row numbers, keeps within its page.</summary>
    public int MostInIndex => ((PageSize - 12) * 64 / 255) - 23;

    /// <summary>Bytes of an overflow page after the number of the next.</summary>
    public int InOverflow => PageSize - 4;

    private int Least => ((PageSize - 12) * 32 / 255) - 23;

    public static PageLayout Of(ReadOnlySpan<byte> header)
    {
        if (header.Length < 100)
            return new PageLayout(UsualPageSize);
        var written = BinaryPrimitives.ReadUInt16BigEndian(header[16..]);
        var size = written == 1 ? 65_536 : written;
        return new PageLayout(size >= 512 && (size & (size - 1)) == 0 ? size : UsualPageSize);
    }

    /// <summary>How much of a payload stands within the page of its row.</summary>
    public int Local(int payload, int most)
    {
        if (payload <= most)
            return payload;
        var kept = Least + ((payload - Least) % InOverflow);
        return kept <= most ? kept : Least;
    }
}
