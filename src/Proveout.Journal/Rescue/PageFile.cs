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

    /// <summary>The database first, then what was written ahead, older before newer.</summary>
    public IEnumerable<byte[]> Images()
    {
        for (var number = 1; number <= PagesInFile; number++)
            if (FromFile(number) is { } page)
                yield return page;
        for (var frame = 0; frame < (_ahead?.Frames ?? 0); frame++)
            yield return _ahead!.Page(frame).ToArray();
    }

    /// <summary>What may stand under a page number: written ahead, and in the file.</summary>
    public IEnumerable<byte[]> Versions(int number)
    {
        if (_newestFrames.TryGetValue(number, out var frame))
            yield return _ahead!.Page(frame).ToArray();
        if (FromFile(number) is { } page)
            yield return page;
    }

    public void Dispose() => _file.Dispose();

    private byte[]? FromFile(int number)
    {
        if (number < 1 || number > PagesInFile)
            return null;
        var page = new byte[Layout.PageSize];
        _file.Position = (long)(number - 1) * Layout.PageSize;
        // A file that was cut off has a last page that is filled up with zeros here.
        _file.ReadAtLeast(page, page.Length, throwOnEndOfStream: false);
        return page;
    }
}
