namespace Proveout.Engine.Heat;

/// <summary>Lines of a long log that hold its warm-up, to be read once more: thinned as a whole, what takes minutes is lost in a log of days.</summary>
public static class LogWindow
{
    private const double Full = 0.97;

    // So long before full output, the heater has been off for long enough to tell.
    private const double BeforeSeconds = 3600;

    /// <summary>First and last line; null when no row was thinned, or full output never begins.</summary>
    public static (int FromLine, int ToLine)? Of(HeaterTrace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        if (trace.Run.Rows <= trace.Seconds.Length || trace.Output is not { } output)
            return null;
        var on = Array.FindIndex(output.Most, most => most >= Full);
        if (on < 0)
            return null;
        var end = Array.FindIndex(output.Most, on, most => most < Full);
        end = end < 0 ? output.Most.Length : end;
        // As long again, so that what follows is seen to be throttled; a thinned row more at either end.
        var last = Math.Min((2 * end) - on + 2, trace.Run.Lines.Length);
        var first = on;
        while (first > 0 && trace.Seconds[on] - trace.Seconds[first] < BeforeSeconds)
            first--;
        return (trace.Run.Lines[first], last < trace.Run.Lines.Length ? trace.Run.Lines[last] - 1 : trace.Run.LastLine);
    }
}
