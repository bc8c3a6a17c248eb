namespace Proveout.Engine.Machine;

/// <summary>A value, or the diagnostics that say why there is none.</summary>
/// <typeparam name="T">The value's type.</typeparam>
public sealed class Outcome<T>
    where T : class
{
    internal Outcome(T? value, IReadOnlyList<Diagnostic> diagnostics) => (Value, Diagnostics) = (value, diagnostics);

    /// <summary>The value; null when there are diagnostics.</summary>
    public T? Value { get; }

    /// <summary>Everything that is wrong, in file order; empty when there is a value.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; }
}

/// <summary>Makes outcomes.</summary>
public static class Outcome
{
    /// <summary>An outcome with a value.</summary>
    public static Outcome<T> Of<T>(T value)
        where T : class => new(value, []);

    /// <summary>An outcome without a value.</summary>
    /// <exception cref="ArgumentException">There are no diagnostics.</exception>
    public static Outcome<T> Refused<T>(IReadOnlyList<Diagnostic> diagnostics)
        where T : class =>
        diagnostics.Count > 0 ? new(null, diagnostics) : throw new ArgumentException("A refusal needs a reason.", nameof(diagnostics));
}
