namespace Proveout.Engine.Tests.Machine;

/// <summary>One slip in a sample, and what the reader must say about it.</summary>
internal static class Mistake
{
    private const char Mark = '^';

    /// <summary>Asserts that a slip gives exactly one diagnostic: its rule, its place, and what its sentences hold.</summary>
    /// <param name="sample">The sample to spoil.</param>
    /// <param name="right">Text of the sample.</param>
    /// <param name="wrong">What stands there instead; a caret marks the place that the diagnostic must point at, and is taken out.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="offending">Text that the message must quote.</param>
    /// <param name="mend">Text that the mend must hold.</param>
    public static void IsReported(string sample, string right, string wrong, string rule, string offending, string mend)
    {
        Assert.Contains(right, sample, StringComparison.Ordinal);
        var at = sample.IndexOf(right, StringComparison.Ordinal);
        var marked = sample[..at] + wrong + sample[(at + right.Length)..];
        var before = marked[..marked.IndexOf(Mark, at)];
        var text = before + marked[(before.Length + 1)..];

        var diagnostic = Assert.Single(sample == Sample.MachineText ? Sample.Read(text).Diagnostics : Sample.ReadCatalogue(text).Diagnostics);

        Assert.Equal(rule, diagnostic.Rule);
        Assert.Equal((before.Count(sign => sign == '\n') + 1, before.Length - before.LastIndexOf('\n')), (diagnostic.Place.Line, diagnostic.Place.Column));
        Assert.Contains($"`{offending}`", diagnostic.Message, StringComparison.Ordinal);
        Assert.Contains(mend, diagnostic.Mend, StringComparison.Ordinal);
    }
}
