using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>How far from the computed voltage a meter may read.</summary>
/// <remarks>Not proved by monotony as dead readings are: chosen wide. The reasons of each figure stand in docs/methods/symptoms.md.</remarks>
internal abstract class VoltageBand
{
    // A meter on direct voltage shows nothing of use with more alternating voltage on it than this.
    private const double HumVolts = 5;

    // A reading that lies closer to the sound one is not looked into further.
    private const double SameVolts = 0.02;

    /// <summary>Voltage of a supply, rail or output.</summary>
    public static VoltageBand Direct { get; } = new Plain("DC volts", "", isDirect: true, 0.94, 1.06, 0.1);

    /// <summary>Voltage that is lost along conductors under load.</summary>
    public static VoltageBand Drop { get; } = new Plain("DC volts lost under load", "-drop", isDirect: true, 0.3, 2, 0.05);

    /// <summary>Voltage between line and neutral.</summary>
    public static VoltageBand Mains { get; } = new Plain("AC volts", "-ac", isDirect: false, 0.88, 1.12, 2);

    /// <summary>Voltage of metal against the protective conductor, through whatever drives it.</summary>
    public static VoltageBand Metal { get; } = new Plain("AC volts", "-ac", isDirect: false, 0.3, 3, 1);

    /// <summary>What the meter is set to.</summary>
    public abstract string Words { get; }

    /// <summary>What tells its checks from others at the same places.</summary>
    public abstract string Suffix { get; }

    /// <summary>What may be shown between two nodes.</summary>
    /// <param name="red">Node of the red lead.</param>
    /// <param name="black">Node of the black lead.</param>
    /// <param name="sound">The sound machine.</param>
    public abstract Func<LiveView, ReadingInterval> Between(int red, int black, LiveView sound);

    private sealed class Plain(string words, string suffix, bool isDirect, double least, double most, double volts) : VoltageBand
    {
        public override string Words => words;

        public override string Suffix => suffix;

        public override Func<LiveView, ReadingInterval> Between(int red, int black, LiveView sound)
        {
            var usual = Volts(sound, red, black);
            return view => view.Solution.Settled
                ? view.Everything(now => Now(now, red, black, usual), Around(0))
                : ReadingInterval.Anything;
        }

        private ReadingInterval Now(LiveView view, int red, int black, double usual)
        {
            var shown = Volts(view, red, black);
            if (isDirect && view.AlternatingVolts(red, black) > HumVolts)
                return ReadingInterval.Anything;
            if (Math.Abs(shown - usual) < SameVolts)
                return Around(shown);
            if (isDirect && !view.AreJoined(red, black))
                return ReadingInterval.Anything;
            return isDirect && view.IsLimiting ? Around(shown).Hull(Around(0)).Hull(Around(usual)) : Around(shown);
        }

        private double Volts(LiveView view, int red, int black) =>
            isDirect ? view.DirectVolts(red, black) : view.AlternatingVolts(red, black);

        private ReadingInterval Around(double shown)
        {
            var (one, other) = (shown * least, shown * most);
            var low = Math.Min(one, other) - volts;
            return new(isDirect ? low : Math.Max(0, low), Math.Max(one, other) + volts);
        }
    }
}
