namespace Proveout.Journal.Rescue;

/// <summary>Every page image of a journal file and of the file written ahead of it, read as plain bytes and never through the database.</summary>
internal sealed class PageFile : IDisposable
{
    private readonly FileStream _file;
    private readonly WriteAheadFile? _ahead;
    private readonly Dictionary<int, int> _newestFrames = [];

    public PageFile(string path)
    {
        _file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        _ahead = WriteAheadFile.Beside(path);
        var header = new byte[100];
        var read = _file.ReadAtLeast(header, header.Length, throwOnEndOfStream: false);
        Layout = _ahead is null ? PageLayout.Of(header.AsSpan(0, read)) : new PageLayout(_ahead.PageSize);
        for (var frame = 0; frame < (_ahead?.Frames ?? 0); frame++)
            _newestFrames[_ahead!.PageNumber(frame)] = frame;
    }

    public PageLayout Layout { get; }

    /// <summary>No row can be longer.</summary>
    public long Bytes => _file.Length + ((long)(_ahead?.Frames ?? 0) * Layout.PageSize);

    private int PagesInFile => (int)((_file.Length + Layout.PageSize - 1) / Layout.PageSize);

    /// <summary>The database first, then what was written ahead, older before newer. Each is there until the next is asked for.</summary>
    public IEnumerable<byte[]> Images()
    {
        var page = new byte[Layout.PageSize];
        for (var number = 1; number <= PagesInFile; number++)
            if (ReadFromFile(number, page))
                yield return page;
        for (var frame = 0; frame < (_ahead?.Frames ?? 0); frame++)
        {
            _ahead!.Page(frame).CopyTo(page);
            yield return page;
        }
    }

    /// <summary>Reads what stands under a page number: as last written ahead, or as it is in the file; the other where there is but one.</summary>
    /// <param name="number">The number; none of the file gives false.</param>
    /// <param name="isNewest">Whether what was written ahead comes first.</param>
    /// <param name="page">Takes the page.</param>
    public bool Read(int number, bool isNewest, Span<byte> page) => isNewest
        ? ReadAhead(number, page) || ReadFromFile(number, page)
        : ReadFromFile(number, page) || ReadAhead(number, page);

    /// <summary>Whether a page stands both in the file and in what was written ahead.</summary>
    public bool HasTwo(int number) => _newestFrames.ContainsKey(number) && number >= 1 && number <= PagesInFile;

    public void Dispose() => _file.Dispose();

    private bool ReadAhead(int number, Span<byte> page)
    {
        if (!_newestFrames.TryGetValue(number, out var frame))
            return false;
        _ahead!.Page(frame).CopyTo(page);
        return true;
    }

    private bool ReadFromFile(int number, Span<byte> page)
    {
        if (number < 1 || number > PagesInFile)
            return false;
        // A file that was cut off has a last page that is filled up with zeros here.
        var (at, offset) = (0, (long)(number - 1) * Layout.PageSize);
        while (at < page.Length && RandomAccess.Read(_file.SafeFileHandle, page[at..], offset + at) is > 0 and var read)
            at += read;
        page[at..].Clear();
        return true;
    }
}
