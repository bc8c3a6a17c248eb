namespace Proveout.Engine.Motion;

/// <summary>
/// How much the bending stiffness of a span raises its note: B = pi² EI / (T L²), so that f² is (1 + B) times that of a limp string with hinged ends
/// (Fletcher 1964, J. Acoust. Soc. Am. 36, 203–209; Fletcher and Rossing, The Physics of Musical Instruments, chapter 2; from memory). Ends that are
/// held against turning raise it further by about 4 sqrt(B) / pi of the frequency squared; a belt that leaves a pulley lies between.
/// </summary>
public abstract record Stiffness
{
    private Stiffness()
    {
    }

    /// <summary>Nothing is known: the force is that of a limp string and may read high.</summary>
    public sealed record Unknown : Stiffness;

    /// <summary>The bending stiffness is known.</summary>
    /// <param name="NewtonSquareMetres">EI, in N·m².</param>
    public sealed record Bending(Uncertain NewtonSquareMetres) : Stiffness;

    /// <summary>B was read from the partials of the sound itself.</summary>
    /// <param name="Inharmonicity">B.</param>
    public sealed record Heard(Uncertain Inharmonicity) : Stiffness;
}
