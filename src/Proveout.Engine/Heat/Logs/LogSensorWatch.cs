namespace Proveout.Engine.Heat;

/// <summary>Follows one sensor from row to row, keeps out what it cannot have measured, and remembers where that was.</summary>
/// <param name="name">Heading of the sensor.</param>
internal sealed class LogSensorWatch(string name)
{
    // No body that desktop machines heat is measured outside these: common practice for the ends of an input's range.
    private const double ColdestCelsius = -10;
    private const double HottestCelsius = 450;

    // Twice what a block heated with four times its power rises in a second, and what noise may add. Over longer steps nothing is said.
    private const double JumpKelvin = 15;
    private const double JumpKelvinASecond = 10;
    private const double LongestStepSeconds = 5;

    // A reading that is away for longer than this, or for more rows, did not spike: it moved.
    private const double SpikeSeconds = 3;
    private const int SpikeRows = 20;

    private LogFlaw? _open;
    private LogFlaw? _spikes;
    private LogFlaw? _jump;
    private (double Celsius, double Seconds) _good = (double.NaN, 0);
    private (int Line, double Seconds, int Rows, double Celsius) _away;
    private (int Line, double Seconds, long Rows, double Celsius, double Output) _same = (0, 0, 0, double.NaN, 0);
    private LogFlaw? _longest;
    private double _first = double.NaN;

    /// <summary>Set when a reading jumped back to where the run began, as after a restart.</summary>
    public int? BackAtStartLine { get; private set; }

    /// <summary>What is wrong with its readings.</summary>
    public IEnumerable<LogFlaw> Flaws => new[] { _open, _spikes, _jump }.OfType<LogFlaw>();

    /// <summary>The longest stretch of one and the same reading while the output was on; null when there is none.</summary>
    public LogFlaw? LongestSame
    {
        get
        {
            Close(_good.Seconds);
            return _longest;
        }
    }

    /// <summary>A word of the log says that the sensor's circuit is open or short.</summary>
    public void SaidFaulty(int line, double seconds) => CountOpen(line, seconds, double.NaN);

    /// <summary>Takes a reading; what is to be kept of it, not a number when nothing is.</summary>
    /// <param name="line">Its line.</param>
    /// <param name="seconds">Its time.</param>
    /// <param name="celsius">The reading.</param>
    /// <param name="output">What the heater is told; not a number when unknown.</param>
    public double Take(int line, double seconds, double celsius, double output)
    {
        if (double.IsNaN(celsius))
            return celsius;
        var step = seconds - _good.Seconds;
        var isNear = !double.IsNaN(_good.Celsius) && step <= LongestStepSeconds && Math.Abs(celsius - _good.Celsius) <= JumpKelvin + (JumpKelvinASecond * step);
        // What got there step by step is as hot as that: a heater that runs away.
        if (celsius is <= ColdestCelsius or >= HottestCelsius && !isNear)
        {
            CountOpen(line, seconds, celsius);
            return double.NaN;
        }

        if (double.IsNaN(_first))
            _first = celsius;
        if (!double.IsNaN(_good.Celsius) && (_away.Rows > 0 || step <= LongestStepSeconds) && Math.Abs(celsius - _good.Celsius) > JumpKelvin + (JumpKelvinASecond * step) && !Settled(line, seconds, celsius))
            return double.NaN;
        if (_away.Rows > 0)
            _spikes = _spikes is null ? new(LogFlawKind.Spikes, name, _away.Line, _away.Seconds, _away.Rows, _away.Celsius) : _spikes with { Rows = _spikes.Rows + _away.Rows };
        _away.Rows = 0;
        FollowSame(line, seconds, celsius, output);
        _good = (celsius, seconds);
        return celsius;
    }

    private void CountOpen(int line, double seconds, double celsius) =>
        _open = _open is null ? new(LogFlawKind.OpenOrShort, name, line, seconds, 1, celsius) : _open with { Rows = _open.Rows + 1 };

    // True when a reading has been away for so long that it counts as moved.
    private bool Settled(int line, double seconds, double celsius)
    {
        if (_away.Rows == 0)
            _away = (line, seconds, 0, celsius);
        _away.Rows++;
        if (seconds - _away.Seconds < SpikeSeconds && _away.Rows < SpikeRows)
            return false;
        if (_good.Celsius - celsius > 2 * JumpKelvin && Math.Abs(celsius - _first) < JumpKelvin)
            BackAtStartLine ??= _away.Line;
        _jump = _jump is null ? new(LogFlawKind.Jump, name, _away.Line, _away.Seconds, 1, celsius - _good.Celsius) : _jump with { Rows = _jump.Rows + 1 };
        _away.Rows = 0;
        return true;
    }

    private void FollowSame(int line, double seconds, double celsius, double output)
    {
        if (celsius != _same.Celsius)
        {
            Close(seconds);
            _same = (line, seconds, 0, celsius, 0);
        }

        _same.Rows++;
        _same.Output += output;
    }

    private void Close(double seconds)
    {
        var lasted = seconds - _same.Seconds;
        if (_same.Rows > 1 && !(_same.Output <= 0) && lasted > (_longest?.ForSeconds ?? 0))
            _longest = new(LogFlawKind.Stuck, name, _same.Line, _same.Seconds, _same.Rows, _same.Celsius, lasted);
    }
}
