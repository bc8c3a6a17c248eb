using System.Globalization;
using System.Text.RegularExpressions;
using PdfSharp.Drawing;

namespace Proveout.Publish.Books;

/// <summary>Reads the path data of our own drawings: W3C SVG 2, 9.3, without quadratic curves, which none of ours has.</summary>
/// <param name="data">The data.</param>
internal sealed partial class PdfPath(string data)
{
    // The library would join what a move sets apart, so each stretch is a path of its own; none of our drawings has a hole in a filled one.
    private readonly List<XGraphicsPath> _paths = [];
    private readonly string[] _words = [.. Words().Matches(data).Select(match => match.Value)];
    private int _next;
    private XPoint _at;
    private XPoint _start;
    private XPoint _lastHandle;

    /// <summary>Its stretches, one from each move to the next.</summary>
    public IReadOnlyList<XGraphicsPath> Read()
    {
        var command = ' ';
        while (_next < _words.Length)
        {
            if (char.IsAsciiLetter(_words[_next][0]))
                command = _words[_next++][0];
            Step(command);
            // Further points after a move are lines (9.3.3).
            command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
        }

        return _paths;
    }

    private void Step(char command)
    {
        var from = char.IsAsciiLetterLower(command) ? _at : new XPoint(0, 0);
        switch (char.ToUpperInvariant(command))
        {
            case 'M':
                _paths.Add(new XGraphicsPath { FillMode = XFillMode.Winding });
                _at = _start = Point(from);
                break;
            case 'L':
                LineTo(Point(from));
                break;
            case 'H':
                LineTo(new XPoint(from.X + Number(), _at.Y));
                break;
            case 'V':
                LineTo(new XPoint(_at.X, from.Y + Number()));
                break;
            case 'C':
                CurveTo(Point(from), Point(from), Point(from));
                return;
            case 'S':
                // The first handle mirrors the last one (9.3.6).
                CurveTo(new XPoint((2 * _at.X) - _lastHandle.X, (2 * _at.Y) - _lastHandle.Y), Point(from), Point(from));
                return;
            case 'A':
                var (size, turn, isLarge, isClockwise) = (new XSize(Number(), Number()), Number(), Number() > 0, Number() > 0);
                var to = Point(from);
                _paths[^1].AddArc(_at, to, size, turn, isLarge, isClockwise ? XSweepDirection.Clockwise : XSweepDirection.Counterclockwise);
                _at = to;
                break;
            case 'Z':
                _paths[^1].CloseFigure();
                _at = _start;
                break;
            default:
                throw new NotSupportedException($"No drawing of ours has the path command {command}.");
        }

        _lastHandle = _at;
    }

    private void LineTo(XPoint to)
    {
        _paths[^1].AddLine(_at, to);
        _at = to;
    }

    private void CurveTo(XPoint first, XPoint second, XPoint to)
    {
        _paths[^1].AddBezier(_at, first, second, to);
        (_at, _lastHandle) = (to, second);
    }

    private double Number() => double.Parse(_words[_next++], CultureInfo.InvariantCulture);

    private XPoint Point(XPoint from)
    {
        var x = Number();
        return new(from.X + x, from.Y + Number());
    }

    [GeneratedRegex(@"[A-Za-z]|-?\d*\.?\d+(?:e-?\d+)?")]
    private static partial Regex Words();
}
