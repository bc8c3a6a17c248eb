namespace Proveout.Engine.Motion;

/// <summary>
/// The tones of a stiff string: f(n) = n F sqrt(1 + B n²), F what a limp string would sound, B its inharmonicity (Fletcher 1964, J. Acoust. Soc. Am. 36,
/// 203–209; Fletcher and Rossing, The Physics of Musical Instruments, chapter 2; from memory). Written here by the sounding fundamental f(1) and B.
/// </summary>
/// <param name="FundamentalHertz">The fundamental that sounds, f(1).</param>
/// <param name="Inharmonicity">B.</param>
internal readonly record struct PartialSeries(double FundamentalHertz, double Inharmonicity)
{
    /// <summary>Frequency of a partial, counted from 1.</summary>
    public double Hertz(int number) => FundamentalHertz * number * Math.Sqrt((1 + (Inharmonicity * number * number)) / (1 + Inharmonicity));

    /// <summary>The partial nearest to a frequency.</summary>
    public int Nearest(double hertz)
    {
        // With r = (f / F)², n² solves B n⁴ + n² = r.
        var square = hertz / FundamentalHertz;
        square *= square * (1 + Inharmonicity);
        var number = Inharmonicity < 1e-9 ? Math.Sqrt(square) : Math.Sqrt((Math.Sqrt(1 + (4 * Inharmonicity * square)) - 1) / (2 * Inharmonicity));
        return (int)Math.Max(1, Math.Round(number));
    }
}
