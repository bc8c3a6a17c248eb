namespace Proveout.Workshop.Tests.Builds;

public sealed class SharedTextsTests
{
    [Fact]
    public void Equal_texts_come_back_as_the_one_that_came_first()
    {
        var texts = new SharedTexts();
        var first = texts.Of(new string(['E', '1']));
        Assert.Same(first, texts.Of(new string(['E', '1'])));
        Assert.Equal("E2", texts.Of("E2"));
    }
}
