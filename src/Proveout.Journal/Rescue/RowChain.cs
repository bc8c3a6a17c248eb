using System.Buffers.Binary;

namespace Proveout.Journal.Rescue;

/// <summary>Puts rows together that go on in overflow pages, in one buffer for all.</summary>
/// <param name="pages">The file.</param>
internal sealed class RowChain(PageFile pages)
{
    // A page belongs to one row, which is put together twice at most; far more are rows that only look so, and would be read without end.
    private const int MostVisits = 100;

    private readonly byte[] _page = new byte[pages.Layout.PageSize];
    private readonly Dictionary<int, int> _visits = [];
    private byte[] _whole = [];

    /// <summary>Whether a page of the row that was put together last stands in two versions.</summary>
    public bool HadTwo { get; private set; }

    /// <summary>The payload put together with its overflow pages, valid until the next; empty when a page is missing.</summary>
    public ReadOnlySpan<byte> Whole(ReadOnlySpan<byte> local, int payload, int next, bool isNewest)
    {
        HadTwo = false;
        if (_whole.Length < payload)
            // In leaps, so that ever longer rows do not each get a new one.
            _whole = new byte[(int)Math.Min(Math.Max(payload, 2L * _whole.Length), Array.MaxLength)];
        local.CopyTo(_whole);
        for (var at = local.Length; at < payload;)
        {
            var visits = _visits[next] = _visits.GetValueOrDefault(next) + 1;
            if (visits > MostVisits || !pages.Read(next, isNewest, _page))
                return [];
            HadTwo |= pages.HasTwo(next);
            var part = Math.Min(pages.Layout.InOverflow, payload - at);
            _page.AsSpan(4, part).CopyTo(_whole.AsSpan(at));
            at += part;
            next = (int)BinaryPrimitives.ReadUInt32BigEndian(_page);
        }
        return _whole.AsSpan(0, payload);
    }

    /// <summary>The bytes of a file that was found.</summary>
    /// <exception cref="JournalUnavailableException">They are no longer those that were found.</exception>
    public byte[] Read(FoundFile file)
    {
        _visits.Clear();
        var whole = file.Next == 0 ? file.Local : Whole(file.Local, file.Payload, file.Next, file.IsNewest);
        return whole.Length == file.Payload && whole.Slice(file.Start, file.Length).ToArray() is var bytes && Fingerprint.OfBytes(bytes) == file.Sha256
            ? bytes
            : throw new JournalUnavailableException("The file changed while it was read. Stop what uses it, then start the rescue again.", null);
    }
}
