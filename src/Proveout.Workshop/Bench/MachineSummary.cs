namespace Proveout.Workshop;

/// <summary>A machine that a build can be started from.</summary>
/// <param name="Id">Identifier, as in addresses.</param>
/// <param name="Name">Name.</param>
/// <param name="Summary">One or two sentences.</param>
/// <param name="PartCount">Number of parts.</param>
/// <param name="ConductorCount">Number of conductors.</param>
/// <param name="HasMains">True when mains voltage enters the machine.</param>
public sealed record MachineSummary(string Id, string Name, string Summary, int PartCount, int ConductorCount, bool HasMains)
{
    /// <summary>How many guesses stand in its files that nobody has confirmed or corrected yet.</summary>
    public int Guesses { get; init; }
}
