namespace Proveout.Engine.Motion;

/// <summary>Lines of a stream, as bytes, through one buffer.</summary>
/// <param name="stream">The stream; read to its end, not closed.</param>
internal sealed class LineBytes(Stream stream)
{
    /// <summary>Longest line that a table can have.</summary>
    public const int LongestLine = 1 << 16;

    private readonly byte[] _buffer = new byte[1 << 20];
    private int _start;
    private int _end;
    private bool _isOver;
    private bool _wasReturn;

    /// <summary>Number of the line that was read last, counted from 1.</summary>
    public int Number { get; private set; }

    /// <summary>True when the line that was read last was not closed by a line break.</summary>
    public bool IsCutOff { get; private set; }

    /// <summary>True when a line is longer than any table has.</summary>
    public bool IsTooLong { get; private set; }

    /// <summary>The first bytes, before anything is read.</summary>
    public ReadOnlySpan<byte> Beginning
    {
        get
        {
            if (_end == 0)
                Fill();
            return _buffer.AsSpan(_start, Math.Min(4, _end - _start));
        }
    }

    /// <summary>Leaves bytes at the beginning out.</summary>
    public void Skip(int bytes) => _start += bytes;

    /// <summary>The next line without its break; false at the end.</summary>
    public bool TryNext(out ReadOnlySpan<byte> line)
    {
        while (true)
        {
            var rest = _buffer.AsSpan(_start, _end - _start);
            var length = rest.IndexOfAny((byte)'\n', (byte)'\r');
            if (length == 0 && rest[0] == '\n' && _wasReturn)
            {
                // The second half of a break of two bytes.
                (_start, _wasReturn) = (_start + 1, false);
                continue;
            }

            if (length < 0 && rest.Length > LongestLine)
            {
                IsTooLong = true;
                line = default;
                return false;
            }

            if (length < 0 && Fill())
                continue;
            return Take(rest, length, out line);
        }
    }

    private bool Take(ReadOnlySpan<byte> rest, int length, out ReadOnlySpan<byte> line)
    {
        line = length < 0 ? rest : rest[..length];
        if (rest.Length == 0)
            return false;
        (IsCutOff, _wasReturn) = (length < 0, length >= 0 && rest[length] == '\r');
        _start += length < 0 ? rest.Length : length + 1;
        Number++;
        return true;
    }

    private bool Fill()
    {
        if (_isOver)
            return false;
        _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
        (_start, _end) = (0, _end - _start);
        var read = stream.Read(_buffer, _end, _buffer.Length - _end);
        _isOver = read == 0;
        _end += read;
        return read > 0;
    }
}
