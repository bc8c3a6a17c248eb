using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A fan, a lamp, a board: works from some voltage.</summary>
/// <remarks>
/// Wrong only well below the voltage that it works from, right only above it; bounds from memory. Far above what it is made for nothing
/// is claimed: it may work or be destroyed.
/// </remarks>
/// <param name="part">Its part.</param>
/// <param name="branch">Its consumer.</param>
/// <param name="name">Which of several.</param>
/// <param name="fullVolts">The most that it gets in the sound machine.</param>
internal sealed class ConsumerLoad(Part part, LiveBranch branch, string name, double fullVolts) : ILoad
{
    private const double SurelyFrom = 1.05;
    private const double AsDesigned = 0.97;
    private const double SurelyNotTo = 0.85;
    private const double RestsTo = 0.2;
    private const double MostOverRated = 1.25;

    // Part types that do not say from where they work: from memory.
    private const double UsuallyWorksFrom = 0.7;
    private const double MainsVolts = 60;
    private const double HumVolts = 5;

    private readonly double _rated = Rating(branch).Voltage.Volts;
    private readonly double _worksFrom = Rating(branch).WorksFrom?.Volts ?? (UsuallyWorksFrom * Rating(branch).Voltage.Volts);

    public Part Part => part;

    public string Name => name;

    public string AtWork => part.Type.ClassLetter switch
    {
        "G" => "turns at full output",
        "E" or "P" when _rated is > 4.9 and < 5.1 => "shows a picture",
        "E" or "P" => "lights",
        "A" or "T" => "comes up",
        "Q" => "shows by its lamp that it is driven",
        _ => "works",
    };

    public string AtRest => part.Type.ClassLetter switch
    {
        "G" => "stands still",
        "A" or "T" => "stays off",
        _ => "stays dark",
    };

    /// <summary>The voltage that counts.</summary>
    public static double Volts(LiveBranch branch, LiveView view) =>
        Rating(branch).Voltage.Volts > MainsVolts ? view.AlternatingVolts(branch.A, branch.B) : view.DirectVolts(branch.A, branch.B);

    public ReadingInterval Works(LiveView view)
    {
        var volts = Volts(branch, view);
        if (IsDisturbed(view) || volts > MostOverRated * _rated)
            return Seen.CannotTell;
        var seen = Seen.High(volts, Math.Min(SurelyFrom * _worksFrom, AsDesigned * fullVolts), SurelyNotTo * _worksFrom);
        return seen == Seen.Right && view.IsLimiting && volts < AsDesigned * fullVolts ? Seen.CannotTell : seen;
    }

    public ReadingInterval Rests(LiveView view) =>
        IsDisturbed(view) ? Seen.CannotTell : Seen.Low(Volts(branch, view), RestsTo * _worksFrom, SurelyFrom * _worksFrom);

    private static Consumer Rating(LiveBranch branch) => (Consumer)branch.Element!;

    // Alternating current on what is made for direct current: nothing is claimed.
    private bool IsDisturbed(LiveView view) => _rated <= MainsVolts && view.AlternatingVolts(branch.A, branch.B) > HumVolts;
}
