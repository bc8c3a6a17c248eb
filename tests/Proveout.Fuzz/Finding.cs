namespace Proveout.Fuzz;

/// <summary>An input that was not borne.</summary>
/// <param name="Target">What read it.</param>
/// <param name="Kind">What happened, the same for the same mistake: the exception and where it was thrown, or what was exceeded.</param>
/// <param name="Detail">More of it, for whoever mends it.</param>
/// <param name="Input">The input.</param>
public sealed record Finding(string Target, string Kind, string Detail, byte[] Input)
{
    /// <summary>One for an exception.</summary>
    public static Finding Of(string target, Exception exception, byte[] input)
    {
        ArgumentNullException.ThrowIfNull(exception);
        var own = (exception.StackTrace ?? "").Split('\n').Select(line => line.Trim()).FirstOrDefault(line => line.StartsWith("at Proveout.", StringComparison.Ordinal)) ?? "";
        var place = own.IndexOf('(', StringComparison.Ordinal) is >= 0 and var end ? own[..end] : own;
        // What a target itself holds against an outcome is told apart by its words, without the figures in them.
        var words = place.StartsWith("at Proveout.Fuzz.", StringComparison.Ordinal) ? string.Concat(exception.Message.Take(60).Where(letter => !char.IsDigit(letter))) : "";
        return new(target, $"{exception.GetType().Name} {place} {words}".Trim(), exception.ToString(), input);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Target}: {Kind} ({Input.Length} bytes)";
}
