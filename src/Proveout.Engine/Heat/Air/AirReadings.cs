using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>What a strip of paper, a hand, a thermometer and a meter show of the air in a bay, sound or with a mistake.</summary>
/// <param name="sound">The bay as designed.</param>
internal sealed class AirReadings(BayClimate sound)
{
    // A strip of thin paper held at an opening surely moves from half a metre a second, and hangs below a tenth; a dry hand surely feels one metre a second, and less than 0.15 not; from memory.
    private static readonly Between PaperMoves = new(0.1, 0.5);
    private static readonly Between HandFeels = new(0.15, 1);

    // Two thermometers of half a kelvin each, and reading them; common practice.
    private const double ThermometerKelvin = 1.5;

    // Where air stands, the thermometer sits in the cooler of what is in the bay.
    private const double StandingShare = 0.6;

    // Common practice for the range of a hand-held meter, and for a speed signal.
    private const double MeterShare = 0.015;
    private const double MeterMilliamperes = 0.5;
    // A small vane moved over the opening; common practice.
    private const double VaneShare = 0.08;
    private const double VaneSpeed = 0.2;
    private const double SignalShare = 0.01;

    private readonly AirOpening[] _openings = [.. sound.Bay.Openings];

    /// <summary>True when air surely leaves the sound bay by an opening, false when it surely comes in there, null when neither is sure.</summary>
    public bool? Leaves(int opening) => sound.Flows.Into(_openings[opening]) switch
    {
        { Low: > 0 } => false,
        { High: < 0 } => true,
        _ => null,
    };

    /// <summary>The opening by which most air leaves the sound bay; null when it surely leaves by none.</summary>
    public int? Outlet => Enumerable.Range(0, _openings.Length).Where(opening => Leaves(opening) == true).OrderBy(opening => sound.Flows.Into(_openings[opening]).At(0.5)).Cast<int?>().FirstOrDefault();

    /// <summary>1 when paper moves as it should, 0 when it does not.</summary>
    public ReadingInterval Paper(BayClimate left, int opening)
    {
        var speed = SpeedInto(left, opening);
        var asExpected = Leaves(opening) == true ? new Between(-speed.High, -speed.Low) : speed;
        return Seen(asExpected, PaperMoves);
    }

    /// <summary>1 when a hand feels a stream, either way; 0 when not.</summary>
    public ReadingInterval Hand(BayClimate left, int opening) => Seen(Size(SpeedInto(left, opening)), HandFeels);

    /// <summary>Metres a second that an air-speed meter shows, moved over the whole opening; many show the same either way round.</summary>
    public ReadingInterval Speed(BayClimate left, int opening)
    {
        var speed = Size(SpeedInto(left, opening));
        return new(Math.Max(0, ((1 - VaneShare) * speed.Low) - VaneSpeed), ((1 + VaneShare) * speed.High) + VaneSpeed);
    }

    /// <summary>Kelvin by which the air just inside the outlet, or in the middle of a bay without one, is warmer than the room after an hour.</summary>
    public ReadingInterval Soaked(BayClimate left)
    {
        var rise = left.RestRise;
        var (low, high) = (rise.Low, rise.High);
        if (Outlet is { } outlet)
        {
            var into = left.FlowsSoaked.Into(left.Bay.Openings[outlet]);
            if (into.High >= 0)
                low = into.High > 0 ? 0 : StandingShare * low;
            if (into.Low > 0)
                high = left.Bay.Returned.High * high;
        }

        return new(low - ThermometerKelvin, high + ThermometerKelvin);
    }

    /// <summary>Milliamperes that a fan takes.</summary>
    public static ReadingInterval Current(OpeningFan fan)
    {
        var milliamperes = fan.CurrentShare.Times(1000 * fan.Amperes!.Value);
        return new(Math.Max(0, ((1 - MeterShare) * milliamperes.Low) - MeterMilliamperes), ((1 + MeterShare) * milliamperes.High) + MeterMilliamperes);
    }

    /// <summary>Turns a minute that a fan's signal shows.</summary>
    public static ReadingInterval Turns(OpeningFan fan)
    {
        var turns = fan.Stands ? new Between(0, 0) : fan.Speed.Times(fan.TurnsAMinute!.Value);
        return new((1 - SignalShare) * turns.Low, (1 + SignalShare) * turns.High);
    }

    // Into the bay, in m/s, over the free area of the design: through the gap of an opening that is shut little air is quick, and before it all is still.
    private Between SpeedInto(BayClimate left, int opening)
    {
        var (into, area) = (left.Flows.Into(left.Bay.Openings[opening]), _openings[opening].SquareMetres);
        return new(into.Low / (into.Low > 0 ? area.High : area.Low), into.High / (into.High > 0 ? area.Low : area.High));
    }

    private static Between Size(Between speed) =>
        new(speed.Low > 0 ? speed.Low : speed.High < 0 ? -speed.High : 0, Math.Max(Math.Abs(speed.Low), Math.Abs(speed.High)));

    private static ReadingInterval Seen(Between speed, Between sure) => new(speed.Low >= sure.High ? 1 : 0, speed.High <= sure.Low ? 0 : 1);
}
