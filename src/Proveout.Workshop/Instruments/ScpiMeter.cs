using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A meter that understands the common commands of IEEE 488.2 and the MEASure subsystem of SCPI-1999 (volume 2, chapter 3).</summary>
/// <param name="link">The way to it.</param>
public sealed class ScpiMeter(IInstrumentLink link) : IMeter, IDisposable
{
    // Common practice: a bench meter integrates for up to a few seconds in its slowest setting, and one that ranges by itself needs several of them.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    // A meter that was zeroed on its leads may stray a little below zero (common practice: a few hundredths of an ohm).
    private const double MostBelowZeroOhms = 0.05;

    private const int LongestName = 80;

    private readonly SemaphoreSlim _one = new(1, 1);

    // Resistance as SCPI-1999 has it; the diode test by common practice, and a meter that does not know it gives no answer, which is said. Not here: the
    // four-wire check, because a meter's own test current is far below the 0.2 A that it asks for, and insulation, because no button of a page puts 500 V on wiring.
    private static readonly Dictionary<string, Question> Questions = new(StringComparer.Ordinal)
    {
        ["resistance"] = new("MEASure:RESistance?", "Ω"),
        ["diode-test"] = new("MEASure:DIODe?", "V"),
    };

    /// <inheritdoc/>
    public bool CanRead(string checkKind) => Questions.ContainsKey(checkKind);

    /// <inheritdoc/>
    public async Task<Outcome<MeterReading>> ReadAsync(string checkKind, CancellationToken cancellation)
    {
        if (!Questions.TryGetValue(checkKind, out var question))
            return Refuse("The meter does not take this kind of reading by itself.", "Take it by hand and type it.");
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        patience.CancelAfter(Patience);
        try
        {
            await _one.WaitAsync(patience.Token);
            try
            {
                return await AskAsync(question, patience.Token);
            }
            finally
            {
                _one.Release();
            }
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return Refuse("The meter did not answer within 10 seconds.", "Look whether it is on and set to be told from outside, or read it and type the reading.");
        }
        catch (IOException)
        {
            return Refuse("Nothing answers at the address of the meter.", "Look at its cable and its address, or read it and type the reading.");
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

    private async Task<Outcome<MeterReading>> AskAsync(Question question, CancellationToken cancellation)
    {
        await using var line = await link.OpenAsync(cancellation);
        var name = NameOf(await line.AskAsync("*IDN?", cancellation));
        var answer = await line.AskAsync(question.Text, cancellation);
        if (ScpiNumber.TryRead(answer) is not { } value)
            return Refuse("The meter answered, but not with a value.", "Look at its display, then read it and type the reading.");
        return question.Unit == "Ω" && value < -MostBelowZeroOhms
            ? Refuse("The meter shows a resistance below zero, so its zero is not that of these leads.", "Touch the tips together, zero it again, and take the reading anew.")
            : Outcome.Of(new MeterReading(Typed(value, question.Unit), name));
    }

    private static string Typed(double value, string unit) =>
        double.IsPositiveInfinity(value) ? "OL"
        : unit == "Ω" && value < 0 ? "0"
        : value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string NameOf(string answer)
    {
        var plain = string.Concat(answer.Where(sign => !char.IsControl(sign))).Trim();
        return plain.Length <= LongestName ? plain : plain[..LongestName];
    }

    private static Outcome<MeterReading> Refuse(string message, string mend) =>
        Outcome.Refused<MeterReading>([new("meter", new SourcePlace("meter", 0, 0), message, mend)]);

    private sealed record Question(string Text, string Unit);
}
