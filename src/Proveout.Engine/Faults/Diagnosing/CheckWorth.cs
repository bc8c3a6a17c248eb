namespace Proveout.Engine.Faults;

/// <summary>What a check is expected to tell, and what it costs.</summary>
/// <param name="Check">Index of the check.</param>
/// <param name="Bits">Expected information about which hypothesis holds, in bits.</param>
/// <param name="Seconds">Time that it takes from where the bench stands.</param>
public sealed record CheckWorth(int Check, double Bits, double Seconds)
{
    /// <summary>Expected information a minute.</summary>
    public double BitsAMinute => Bits * 60 / Seconds;
}
