using System.Globalization;
using System.Text;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>Recordings of oscillators whose frequency and damping are known, sampled exactly.</summary>
internal sealed record SyntheticShake(double RateHertz, double Seconds, params (double Hertz, double Damping, double Share)[] Modes)
{
    private const int Oversampling = 8;

    public int Seed { get; init; } = 1;

    /// <summary>Noise of the sensor beside the signal, in m/s².</summary>
    public double SensorNoise { get; init; } = 0.005;

    public int Count => (int)(RateHertz * Seconds);

    /// <summary>Acceleration under a white-noise force, exact from step to step for a force that is constant over an eighth of a sample; the sensor shows the mean over a sample, as its filter makes it.</summary>
    public double[] UnderNoise()
    {
        var random = new Random(Seed);
        var samples = new double[Count];
        var step = 1 / (RateHertz * Oversampling);
        var states = Modes.Select(mode => new Oscillator(mode.Hertz, mode.Damping, step)).ToArray();
        for (var warm = -(int)(RateHertz * 2); warm < samples.Length; warm++)
        {
            var sum = 0.0;
            for (var fine = 0; fine < Oversampling; fine++)
            {
                var force = Gauss(random);
                foreach (var (index, mode) in Modes.Index())
                    sum += mode.Share * states[index].Next(force);
            }

            if (warm >= 0)
                samples[warm] = (sum / Oversampling) + (SensorNoise * Gauss(random));
        }

        return samples;
    }

    /// <summary>Acceleration after blows, each followed by free decay.</summary>
    public double[] UnderBlows(params double[] times)
    {
        var random = new Random(Seed);
        return
        [
            .. Enumerable.Range(0, Count).Select(index => index / RateHertz).Select(time =>
                (SensorNoise * Gauss(random)) + times.Where(blow => time >= blow).Sum(blow => Modes.Sum(mode => mode.Share * Free(time - blow, mode.Hertz, mode.Damping)))),
        ];
    }

    /// <summary>A table with time, x and z, gravity on z.</summary>
    public static string Table(double[] samples, double rate, string separator = ";", string head = "time [s];x [m/s²];z [m/s²]", Func<int, double>? time = null) =>
        Text(head.Replace(";", separator, StringComparison.Ordinal), samples.Select((sample, index) => string.Create(
            CultureInfo.InvariantCulture, $"{(time is null ? index / rate : time(index)):0.########}{separator}{sample:0.000000}{separator}9.81")));

    public static string Text(string head, IEnumerable<string> rows) => new StringBuilder(head).Append('\n').AppendJoin('\n', rows).Append('\n').ToString();

    public static AccelerationRecord Read(string text, SignalOptions? options = null)
    {
        var read = AccelerationReader.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), "shake.csv", options ?? new SignalOptions());
        Assert.Empty(read.Diagnostics);
        return read.Value!;
    }

    public static double Gauss(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static double Free(double time, double hertz, double damping)
    {
        var turn = 2 * Math.PI * hertz;
        return Math.Exp(-damping * turn * time) * Math.Sin(turn * Math.Sqrt(1 - (damping * damping)) * time);
    }

    // x'' + 2 zeta w x' + w² x = force; the step is that of a constant force.
    private sealed class Oscillator
    {
        private readonly double _turn;
        private readonly double _damping;
        private readonly double[] _step;
        private double _place;
        private double _speed;

        public Oscillator(double hertz, double damping, double step)
        {
            (_turn, _damping) = (2 * Math.PI * hertz, damping);
            var damped = _turn * Math.Sqrt(1 - (damping * damping));
            var (decay, cosine, sine) = (Math.Exp(-damping * _turn * step), Math.Cos(damped * step), Math.Sin(damped * step));
            _step =
            [
                decay * (cosine + (damping * _turn / damped * sine)), decay * sine / damped,
                -decay * _turn * _turn / damped * sine, decay * (cosine - (damping * _turn / damped * sine)),
            ];
        }

        public double Next(double force)
        {
            var rest = force / (_turn * _turn);
            var place = _place - rest;
            (_place, _speed) = (rest + (_step[0] * place) + (_step[1] * _speed), (_step[2] * place) + (_step[3] * _speed));
            return force - (2 * _damping * _turn * _speed) - (_turn * _turn * _place);
        }
    }
}
