using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

public sealed class SourceTextTests
{
    [Fact]
    public void Utf8_is_decoded_with_and_without_a_byte_order_mark()
    {
        var bytes = Encoding.UTF8.GetBytes("summary: 60 °C");

        Assert.Equal("summary: 60 °C", SourceText.Decode("m.yaml", bytes).Value!.Text);
        Assert.Equal("summary: 60 °C", SourceText.Decode("m.yaml", [0xEF, 0xBB, 0xBF, .. bytes]).Value!.Text);
    }

    [Fact]
    public void An_empty_file_is_text() => Assert.Equal("", SourceText.Decode("m.yaml", []).Value!.Text);

    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    public void Utf16_is_refused_by_its_name(bool bigEndian, bool byteOrderMark)
    {
        var encoding = new UnicodeEncoding(bigEndian, byteOrderMark);

        var diagnostic = Assert.Single(SourceText.Decode("m.yaml", [.. encoding.GetPreamble(), .. encoding.GetBytes("format: x")]).Diagnostics);

        Assert.Equal(("wrong-encoding", "m.yaml"), (diagnostic.Rule, diagnostic.Place.ToString()));
        Assert.Contains("UTF-16", diagnostic.Message, StringComparison.Ordinal);
        Assert.Contains("UTF-8", diagnostic.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_byte_that_is_not_utf8_is_refused_with_its_place()
    {
        var latin1 = Encoding.Latin1.GetBytes("name: a\nnote: 60 °C");

        var diagnostic = Assert.Single(SourceText.Decode("m.yaml", latin1).Diagnostics);

        Assert.Equal(("wrong-encoding", "m.yaml:2:10"), (diagnostic.Rule, diagnostic.Place.ToString()));
        Assert.Contains("0xB0", diagnostic.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_binary_file_is_refused_with_the_place_of_its_first_control_character()
    {
        var diagnostic = Assert.Single(SourceText.Decode("m.yaml", "PK\u0003\u0004\0"u8).Diagnostics);

        Assert.Equal(("not-text", "m.yaml:1:3"), (diagnostic.Rule, diagnostic.Place.ToString()));
    }

    [Fact]
    public void A_file_above_the_size_limit_is_refused_and_one_at_the_limit_is_not()
    {
        var bytes = new byte[SourceText.LargestFile + 1];
        bytes.AsSpan().Fill((byte)'a');

        Assert.Equal("file-too-large", Assert.Single(SourceText.Decode("m.yaml", bytes).Diagnostics).Rule);
        Assert.NotNull(SourceText.Decode("m.yaml", bytes.AsSpan(1)).Value);
    }
}
