using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>A current to set, said both ways, because drivers ask for one or the other and mixing them is wrong by 1.41.</summary>
/// <param name="RmsAmperes">Root mean square of the sine in each phase.</param>
/// <param name="PeakAmperes">Its peak.</param>
/// <param name="CopperWatts">Heat in both windings at 20 °C while it turns or holds: 2 R I² with I r.m.s.</param>
/// <param name="TorqueShare">Holding torque against that at the rating; it goes with the current.</param>
public sealed record CurrentSetting(double RmsAmperes, double PeakAmperes, double CopperWatts, double TorqueShare)
{
    /// <summary>Share of the rating that is usual while moving, because the case shall stay touchable and printed mounts hard (60 to 80 %: common practice).</summary>
    public const double UsualShare = 0.7;

    /// <summary>The setting at a share of the rating.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0, or above 1: more than the rating is not proposed.</exception>
    public static CurrentSetting Of(StepperRating rating, double share = UsualShare)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(share);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(share, 1);
        var rms = share * rating.Current.Amperes;
        return new(rms, Math.Sqrt(2) * rms, 2 * rating.Resistance.Ohms * rms * rms, share);
    }

    /// <summary>Both currents in words, rounded down, so that the setting never exceeds what was meant.</summary>
    public string Words => string.Create(
        CultureInfo.InvariantCulture,
        $"{Down(RmsAmperes):0.00} A where the driver asks for r.m.s., {Down(PeakAmperes):0.00} A where it asks for peak");

    private static double Down(double amperes) => Math.Floor((amperes * 100) + 1e-9) / 100;
}
