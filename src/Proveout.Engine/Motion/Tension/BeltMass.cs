using UnitsNet;

namespace Proveout.Engine.Motion;

/// <summary>Mass of a belt per length, with its uncertainty.</summary>
/// <param name="KilogramsPerMetre">The figure, in kg/m.</param>
/// <param name="IsGuessed">True when it comes from a table, not from a balance.</param>
public sealed record BeltMass(Uncertain KilogramsPerMetre, bool IsGuessed)
{
    // Belts of 2 mm pitch, rubber on glass cord: 1.1 to 1.6 g for each metre of length and millimetre of width (from memory; not seen in a data sheet).
    private const double LeastByWidth = 1.1e-3;
    private const double MostByWidth = 1.6e-3;

    /// <summary>From a piece on a balance.</summary>
    /// <param name="mass">What it weighs.</param>
    /// <param name="massStandard">Standard uncertainty of that.</param>
    /// <param name="length">How long it is.</param>
    /// <param name="lengthStandard">Standard uncertainty of that.</param>
    public static BeltMass Weighed(Mass mass, Mass massStandard, Length length, Length lengthStandard)
    {
        var value = mass.Kilograms / length.Meters;
        return new(new(value, value * Uncertain.Combine(massStandard / mass, lengthStandard / length)), false);
    }

    /// <summary>From a data sheet or an earlier weighing.</summary>
    public static BeltMass Given(LinearDensity density, LinearDensity standard) => new(new(density.KilogramsPerMeter, standard.KilogramsPerMeter), false);

    /// <summary>A guess for a belt of 2 mm pitch by its width, when nobody can weigh it; the force from it is uncertain by a fifth.</summary>
    public static BeltMass Typical(Length width) => new(
        Uncertain.Within((LeastByWidth + MostByWidth) / 2 * width.Millimeters, (MostByWidth - LeastByWidth) / 2 * width.Millimeters), true);
}
