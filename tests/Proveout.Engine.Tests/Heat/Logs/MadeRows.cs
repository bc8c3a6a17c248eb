using System.Globalization;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Rows of a log that are made while they are read, so that a long log needs no memory: rows 10 ms apart, 20 °C, once 43.7 °C after a slow way there.</summary>
internal sealed class MadeRows(int rows) : TextReader
{
    private string _line = "time [s],temperature [degC],output [0-1]\n";
    private int _at;
    private int _row;

    public override int Read(char[] buffer, int index, int count)
    {
        var given = 0;
        while (given < count)
        {
            if (_at == _line.Length)
            {
                if (_row == rows)
                    return given;
                _line = string.Create(CultureInfo.InvariantCulture, $"{0.01 * _row:0.00},{(_row == 500_001 ? 43.7 : _row is > 499_990 and < 500_010 ? 40 : 30):0.0},1\n");
                (_at, _row) = (0, _row + 1);
            }

            var part = Math.Min(count - given, _line.Length - _at);
            _line.CopyTo(_at, buffer, index + given, part);
            _at += part;
            given += part;
        }

        return given;
    }
}
