namespace Proveout.Engine.Faults;

/// <summary>How a simulated builder fared.</summary>
/// <param name="Made">Indices of the mistakes that were made.</param>
/// <param name="Checks">Number of checks read until all were found and mended.</param>
/// <param name="ChecksOnceOff">Of these, the checks chosen because a reading was off.</param>
/// <param name="BitsOnceOff">What was unknown when the first reading was off: entropy of the suspects, those alike taken as one, in bits.</param>
/// <param name="MostBits">The most that any check was expected to tell at any step, in bits.</param>
/// <param name="Rank">Place of the truth among the suspects at the end, 1 when it was first; that of the mistake which came out worst; 0 when it was not among them.</param>
/// <param name="WasAlwaysSuspected">True when the truth was among the suspects whenever a reading was off.</param>
public sealed record BuilderTrial(
    IReadOnlyList<int> Made, int Checks, int ChecksOnceOff, double BitsOnceOff, double MostBits, int Rank, bool WasAlwaysSuspected);
