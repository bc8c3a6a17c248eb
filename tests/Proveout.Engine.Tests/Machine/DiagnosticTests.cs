using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class DiagnosticTests
{
    [Fact]
    public void A_message_that_quotes_a_whole_file_is_cut_in_the_middle()
    {
        var diagnostic = new Diagnostic("not-a-number", new SourcePlace("a.csv", 1, 1), $"`{new string('x', 100_000)}` is not a number.", "Write one.");

        Assert.InRange(diagnostic.Message.Length, 100, 2100);
        Assert.StartsWith("`xx", diagnostic.Message, StringComparison.Ordinal);
        Assert.EndsWith("is not a number.", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_of_usual_length_is_left_as_it_is() =>
        Assert.Equal("`x` is not a number.", new Diagnostic("not-a-number", new SourcePlace("a.csv", 1, 1), "`x` is not a number.", "Write one.").Message);
}
