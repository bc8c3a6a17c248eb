namespace Proveout.Engine.Heat;

/// <summary>A part in a bay that the air may become too warm for.</summary>
/// <param name="Designation">Its designation.</param>
/// <param name="AboveAirKelvin">By how much the air at it is warmer than the air that leaves the bay.</param>
/// <param name="LimitCelsius">Temperature that the air at it may have.</param>
/// <param name="Basis">Where that limit comes from.</param>
public sealed record BayPart(string Designation, double AboveAirKelvin, double LimitCelsius, string Basis)
{
    /// <summary>How it gives less with warmth; null when not known, or when its limit is hard.</summary>
    public Derating? Derating { get; init; }

    /// <summary>Share of what it gives that still is given in air of a temperature; 1 up to its limit, and 0 above a hard one.</summary>
    public double ShareAt(double celsius) =>
        celsius <= LimitCelsius ? 1 : Derating is null ? 0 : Math.Max(0, 1 - (Derating.SharePerKelvin * (celsius - LimitCelsius)));

    /// <summary>True when it still does what is asked of it in air of a temperature.</summary>
    public bool Bears(double celsius) => ShareAt(celsius) >= (Derating?.AskedShare ?? 1);

    /// <summary>Warmest air in °C in which it still does what is asked of it.</summary>
    public double BearsUpTo => Derating is null ? LimitCelsius : LimitCelsius + (Math.Max(0, 1 - Derating.AskedShare) / Derating.SharePerKelvin);
}
