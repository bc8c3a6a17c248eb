namespace Proveout.Engine.Faults;

/// <summary>Where the leads are and what the meter is set to, by number; <see cref="None"/> for a lead that lies down.</summary>
internal readonly record struct LeadState(int Red, int Black, int Kind)
{
    /// <summary>The number of no place.</summary>
    public const int None = -1;

    /// <summary>The same meter, both leads put down.</summary>
    public LeadState LeadsDown => new(None, None, Kind);
}
