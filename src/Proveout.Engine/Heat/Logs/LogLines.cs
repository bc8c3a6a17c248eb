namespace Proveout.Engine.Heat;

/// <summary>Lines of a text, one at a time in the same memory, so that a log of any length needs no more of it.</summary>
/// <param name="text">The text.</param>
internal sealed class LogLines(TextReader text)
{
    private const int LongestLine = 1 << 16;

    private readonly char[] _buffer = new char[2 * LongestLine];
    private int _from;
    private int _to;
    private bool _ended;
    private bool _isAfterReturn;

    /// <summary>Number of the line last given, from 1.</summary>
    public int Number { get; private set; }

    /// <summary>True when a line is longer than any log's: then this is no table.</summary>
    public bool IsNoText { get; private set; }

    /// <summary>The next line without its end; false after the last. It holds until the next call.</summary>
    public bool Next(out ReadOnlySpan<char> line)
    {
        SkipLineFeed();
        var end = _buffer.AsSpan(_from, _to - _from).IndexOfAny('\r', '\n');
        if (end < 0 && !_ended)
        {
            Fill();
            end = _buffer.AsSpan(_from, _to - _from).IndexOfAny('\r', '\n');
        }

        var left = _to - _from;
        IsNoText |= (end < 0 ? left : end) > LongestLine;
        line = _buffer.AsSpan(_from, end < 0 ? left : end);
        if (IsNoText || (end < 0 && left == 0))
            return false;
        Number++;
        Skip(end < 0 ? left : end);
        if (Number == 1)
            line = line.TrimStart('\uFEFF');
        return true;
    }

    // Past the line and its end, which is one of "\n", "\r\n", "\r".
    private void Skip(int length)
    {
        _from += length;
        if (_from < _to)
            _isAfterReturn = _buffer[_from++] == '\r';
    }

    private void SkipLineFeed()
    {
        if (!_isAfterReturn)
            return;
        if (_from == _to && !_ended)
            Fill();
        if (_from < _to && _buffer[_from] == '\n')
            _from++;
        _isAfterReturn = false;
    }

    // Moves what is left to the front and reads on until the memory is full.
    private void Fill()
    {
        _buffer.AsSpan(_from, _to - _from).CopyTo(_buffer);
        (_from, _to) = (0, _to - _from);
        while (_to < _buffer.Length && !_ended)
        {
            var read = text.Read(_buffer, _to, _buffer.Length - _to);
            _ended = read == 0;
            _to += read;
        }
    }
}
