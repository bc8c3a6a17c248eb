using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A conductor with what it bears.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="Element">Number of its copper in the network.</param>
/// <param name="LastingAmperes">Current that it carries all the time.</param>
/// <param name="ShortHeat">Square of the current times the time that it bears in a short circuit, in A²s.</param>
internal sealed record LiveConductor(Conductor Conductor, int Element, double LastingAmperes, double ShortHeat)
{
    // Copper in PVC from 70 °C to 160 °C, IEC 60364-4-43 table 43A.
    private const double AmpereRootSecondsPerSquareMillimetre = 115;

    // A conductor bears 1.45 times its capacity for as long as its protective device may take (IEC 60364-4-43 clause 433.1).
    private const double ConventionalShare = 1.45;

    public static LiveConductor Of(WiringContext context, NetworkElement copper)
    {
        var conductor = context.Design.Conductors.First(candidate => candidate.Id == copper.Subject);
        var squareMillimetres = conductor.CrossSection.SquareMillimeters;
        var root = AmpereRootSecondsPerSquareMillimetre * squareMillimetres;
        return new(conductor, copper.Index, CurrentCapacity.Of(squareMillimetres), root * root);
    }

    /// <summary>True when it bears a current for a time; an infinite time means for good.</summary>
    public bool Bears(double amperes, double seconds)
    {
        var lasting = ConventionalShare * LastingAmperes;
        return amperes <= lasting || (!double.IsPositiveInfinity(seconds) && ((amperes * amperes) - (lasting * lasting)) * seconds <= ShortHeat);
    }
}
