namespace Proveout.Workshop.Tests.Instruments;

public sealed class ScpiMeterTests
{
    [Theory]
    [InlineData("+4.70123000E+03", "4701.23")]
    [InlineData("0.31", "0.31")]
    [InlineData("3.1E-1", "0.31")]
    [InlineData("-2.0E-2", "0")]
    [InlineData("9.9E37", "OL")]
    [InlineData("+9.90000000E+37", "OL")]
    public async Task An_answer_becomes_what_would_be_typed(string answer, string typed)
    {
        using var meter = new ScpiMeter(new Answers(answer));
        var reading = (await meter.ReadAsync("resistance", default)).Value!;
        Assert.Equal(typed, reading.Text);
        Assert.Equal("Own make,simulated,1,0", reading.Instrument);
    }

    [Theory]
    [InlineData("9.91E37")]
    [InlineData("-9.9E37")]
    [InlineData("")]
    [InlineData("4,7")]
    [InlineData("1E999")]
    [InlineData("ERROR")]
    [InlineData("-4.0")]
    public async Task An_answer_that_is_no_value_is_refused(string answer)
    {
        using var meter = new ScpiMeter(new Answers(answer));
        Assert.NotEmpty((await meter.ReadAsync("resistance", default)).Diagnostics);
    }

    [Theory]
    [InlineData("resistance", "MEASure:RESistance?")]
    [InlineData("diode-test", "MEASure:DIODe?")]
    public async Task Each_kind_of_check_asks_its_own_question(string kind, string question)
    {
        var answers = new Answers("1");
        using var meter = new ScpiMeter(answers);
        await meter.ReadAsync(kind, default);
        Assert.Equal(["*IDN?", question], answers.Asked);
    }

    [Theory]
    [InlineData("insulation")]
    [InlineData("four-wire")]
    [InlineData("observation")]
    public async Task A_kind_that_a_button_must_not_start_is_never_asked(string kind)
    {
        var answers = new Answers("1");
        using var meter = new ScpiMeter(answers);
        Assert.False(meter.CanRead(kind));
        Assert.NotEmpty((await meter.ReadAsync(kind, default)).Diagnostics);
        Assert.Empty(answers.Asked);
    }

    private sealed class Answers(string value) : IInstrumentLink, IInstrumentLine
    {
        public List<string> Asked { get; } = [];

        public Task<IInstrumentLine> OpenAsync(CancellationToken cancellation) => Task.FromResult<IInstrumentLine>(this);

        public Task<string> AskAsync(string question, CancellationToken cancellation)
        {
            Asked.Add(question);
            return Task.FromResult(question == "*IDN?" ? "Own make,simulated,1,0" : value);
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
