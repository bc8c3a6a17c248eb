namespace Proveout.Engine.Motion;

/// <summary>
/// A train of impulses that a command is convolved with, so that the vibrations that each sets off cancel
/// (N. C. Singer and W. P. Seering, Preshaping command inputs to reduce system vibration, ASME J. Dynamic Systems, Measurement, and Control 112 (1990) 76-82).
/// </summary>
/// <param name="Kind">Which one.</param>
/// <param name="Hertz">Undamped natural frequency that it is made for.</param>
/// <param name="DampingRatio">Damping ratio that it is made for.</param>
/// <param name="Tolerance">Share of vibration that is tolerated; 0 for kinds that tolerate none.</param>
/// <param name="Impulses">The impulses, in order.</param>
public sealed record InputShaper(ShaperKind Kind, double Hertz, double DampingRatio, double Tolerance, IReadOnlyList<ShaperImpulse> Impulses)
{
    /// <summary>From the first impulse to the last, in s: what every move becomes longer.</summary>
    public double DurationSeconds => Impulses[^1].Seconds;

    /// <summary>How much later the shaped command is on average, in s.</summary>
    public double DelaySeconds => Impulses.Sum(impulse => impulse.Share * impulse.Seconds);

    /// <summary>Spread of the impulses about their mean, in s (the square root of the second central moment): what rounds corners.</summary>
    public double SpreadSeconds
    {
        get
        {
            var delay = DelaySeconds;
            return Math.Sqrt(Impulses.Sum(impulse => impulse.Share * (impulse.Seconds - delay) * (impulse.Seconds - delay)));
        }
    }

    /// <summary>
    /// Vibration left in a mode after the last impulse, as a share of what one impulse at the start leaves: 1 without a shaper (Singer and Seering 1990, equation 3;
    /// W. Singhose, W. Seering and N. Singer, ASME J. Mechanical Design 116 (1994) 654-659, percentage vibration; both from memory).
    /// </summary>
    /// <param name="hertz">Undamped natural frequency of the mode.</param>
    /// <param name="dampingRatio">Its damping ratio, below 1.</param>
    public double Residual(double hertz, double dampingRatio)
    {
        var turn = 2 * Math.PI * hertz;
        var (decay, damped) = (dampingRatio * turn, turn * Math.Sqrt(1 - (dampingRatio * dampingRatio)));
        var (cosine, sine) = (0.0, 0.0);
        foreach (var impulse in Impulses)
        {
            // The factor in front is taken into the sum, so that nothing overflows.
            var weight = impulse.Share * Math.Exp(decay * (impulse.Seconds - DurationSeconds));
            cosine += weight * Math.Cos(damped * impulse.Seconds);
            sine += weight * Math.Sin(damped * impulse.Seconds);
        }

        return Math.Sqrt((cosine * cosine) + (sine * sine));
    }
}
