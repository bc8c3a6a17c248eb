using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A heater, a valve's coil, a brushed motor: works by its power.</summary>
/// <remarks>Bounds as shares of the power of the sound machine; from memory, and wide: warm is what a hand near it notices within minutes.</remarks>
/// <param name="part">Its part.</param>
/// <param name="branch">Its resistance.</param>
/// <param name="name">Which of several.</param>
/// <param name="fullWatts">The most that it gets in the sound machine.</param>
internal sealed class HeatedLoad(Part part, LiveBranch branch, string name, double fullWatts) : ILoad
{
    private const double WorksFrom = 0.6;
    private const double SurelyNotTo = 0.05;
    private const double RestsTo = 0.005;
    private const double SurelyWorksFrom = 0.15;

    public Part Part => part;

    public string Name => name;

    public string AtWork => part.Type.ClassLetter switch
    {
        "E" => "gets warm",
        "M" => "turns",
        _ => "pulls in",
    };

    public string AtRest => part.Type.ClassLetter switch
    {
        "E" => "stays cold",
        "M" => "stands still",
        _ => "stays released",
    };

    /// <summary>The power that it takes, in watts.</summary>
    public static double Watts(LiveBranch branch, LiveView view)
    {
        var siemens = view.Solution.Changed.Siemens[branch.Index];
        var amperes = view.Solution.HeatingAmperes(branch.Index);
        return siemens > 0 ? amperes * amperes / siemens : 0;
    }

    public ReadingInterval Works(LiveView view)
    {
        var watts = Watts(branch, view);
        var seen = Seen.High(watts, WorksFrom * fullWatts, SurelyNotTo * fullWatts);
        return seen == Seen.Right && view.IsLimiting && watts < (1 - SurelyNotTo) * fullWatts ? Seen.CannotTell : seen;
    }

    public ReadingInterval Rests(LiveView view) => Seen.Low(Watts(branch, view), RestsTo * fullWatts, SurelyWorksFrom * fullWatts);
}
