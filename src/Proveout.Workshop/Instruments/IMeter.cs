using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A meter that gives its reading by itself.</summary>
public interface IMeter
{
    /// <summary>True when the meter can take readings of this kind of check.</summary>
    bool CanRead(string checkKind);

    /// <summary>Takes one reading; refused when the meter does not answer, or not with a value.</summary>
    Task<Outcome<MeterReading>> ReadAsync(string checkKind, CancellationToken cancellation);
}
