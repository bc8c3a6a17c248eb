using System.Buffers.Binary;

namespace Proveout.Journal.Rescue;

/// <summary>The file that SQLite writes ahead of the database (sqlite.org/fileformat2.html, 4.1 to 4.3): a header, then frames of one page each.</summary>
internal sealed class WriteAheadFile
{
    private const int HeaderBytes = 32, FrameHeaderBytes = 24;
    private const uint LittleEndianMagic = 0x377F0682, BigEndianMagic = 0x377F0683;
    private readonly byte[] _bytes;

    private readonly string _database;

    private WriteAheadFile(byte[] bytes, int pageSize, string database) => (_bytes, PageSize, _database) = (bytes, pageSize, database);

    public int PageSize { get; }

    public int Frames => (_bytes.Length - HeaderBytes) / (FrameHeaderBytes + PageSize);

    /// <summary>The file beside a database; null when there is none or nothing is in it.</summary>
    public static WriteAheadFile? Beside(string database) => Read(database);

    public ReadOnlySpan<byte> Page(int frame) => Frame(frame)[FrameHeaderBytes..];

    public int PageNumber(int frame) => (int)BinaryPrimitives.ReadUInt32BigEndian(Frame(frame));

    /// <summary>
    /// Whether frames that were committed and synced lie behind one that is damaged. SQLite takes a damaged frame for the end and drops what follows
    /// without a word; that is right after a loss of power, which can only hurt the last transaction, since each is synced before the next begins.
    /// </summary>
    public bool HidesCommitted()
    {
        for (var frame = SoundFrames(); frame + 1 < Frames; frame++)
            if (IsOfThisRound(frame) && IsCommit(frame) && IsOfThisRound(frame + 1))
                return HeaderIsSound || !IsInDatabase();
        return false;
    }

    /// <summary>Number of frames from the start whose sums are right.</summary>
    public int SoundFrames()
    {
        if (!HeaderIsSound)
            return 0;
        var sum = (Big(24), Big(28));
        for (var frame = 0; frame < Frames; frame++)
        {
            sum = Sum(Page(frame), Sum(Frame(frame)[..8], sum));
            var header = Frame(frame);
            if (!IsOfThisRound(frame)
                || sum != (BinaryPrimitives.ReadUInt32BigEndian(header[16..]), BinaryPrimitives.ReadUInt32BigEndian(header[20..])))
                return frame;
        }
        return Frames;
    }

    private bool HeaderIsSound => Sum(_bytes.AsSpan(0, 24), (0, 0)) == (Big(24), Big(28));

    private static WriteAheadFile? Read(string database)
    {
        var bytes = ReadAll(database + "-wal");
        if (bytes.Length < HeaderBytes)
            return null;
        var written = (int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(8));
        var size = written is >= 512 and <= 65_536 && (written & (written - 1)) == 0 ? written : PageLayout.UsualPageSize;
        return new WriteAheadFile(bytes, size, database);
    }

    // Others may have the file open for writing.
    private static byte[] ReadAll(string path)
    {
        if (!File.Exists(path))
            return [];
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Length];
        var read = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length ? bytes : bytes[..read];
    }

    private ReadOnlySpan<byte> Frame(int frame) =>
        _bytes.AsSpan(HeaderBytes + (frame * (FrameHeaderBytes + PageSize)), FrameHeaderBytes + PageSize);

    /// <summary>
    /// The two random numbers of the header change each time SQLite starts the file anew; frames of earlier rounds stay behind. A header that is
    /// damaged itself says nothing of the round; then the first frame does.
    /// </summary>
    private bool IsOfThisRound(int frame) => Frame(frame)[8..16].SequenceEqual(HeaderIsSound ? _bytes.AsSpan(16, 8) : Frame(0)[8..16]);

    /// <summary>
    /// Whether the database has every page as it was last written ahead. SQLite begins the file anew only after that; a power cut while it writes the new
    /// header can tear that, and takes nothing.
    /// </summary>
    private bool IsInDatabase()
    {
        var newest = Enumerable.Range(0, Frames).TakeWhile(IsOfThisRound).GroupBy(PageNumber).ToDictionary(frames => frames.Key, frames => frames.Last());
        using var file = new FileStream(_database, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var page = new byte[PageSize];
        foreach (var (number, frame) in newest)
        {
            file.Position = (long)Math.Max(0, number - 1) * PageSize;
            if (file.ReadAtLeast(page, page.Length, throwOnEndOfStream: false) < page.Length || !Page(frame).SequenceEqual(page))
                return false;
        }
        return true;
    }

    private bool IsCommit(int frame) => BinaryPrimitives.ReadUInt32BigEndian(Frame(frame)[4..]) != 0;

    private uint Big(int at) => BinaryPrimitives.ReadUInt32BigEndian(_bytes.AsSpan(at));

    private (uint First, uint Second) Sum(ReadOnlySpan<byte> bytes, (uint First, uint Second) from)
    {
        var (first, second) = from;
        var isBig = Big(0) == BigEndianMagic;
        if (!isBig && Big(0) != LittleEndianMagic)
            return (uint.MaxValue, uint.MaxValue);
        for (var at = 0; at + 8 <= bytes.Length; at += 8)
        {
            first += Word(bytes[at..], isBig) + second;
            second += Word(bytes[(at + 4)..], isBig) + first;
        }
        return (first, second);
    }

    private static uint Word(ReadOnlySpan<byte> bytes, bool isBig) =>
        isBig ? BinaryPrimitives.ReadUInt32BigEndian(bytes) : BinaryPrimitives.ReadUInt32LittleEndian(bytes);
}
