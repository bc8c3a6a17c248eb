namespace Proveout.Engine.Motion;

/// <summary>
/// Force from note and note from force: f = sqrt(T / m) / (2 L) for a limp string (Mersenne 1636), with T = 4 m L² f² - pi² EI / L² for a stiff one with
/// hinged ends. Uncertainty by the law of propagation (JCGM 100:2008, 5.1.2), inputs independent.
/// </summary>
public static class StringFormula
{
    /// <summary>Force in the span, in N.</summary>
    /// <param name="span">The span.</param>
    /// <param name="hertz">Its fundamental.</param>
    public static Uncertain Force(BeltSpan span, Uncertain hertz)
    {
        var (length, mass) = (span.LengthMetres, span.Mass.KilogramsPerMetre);
        var limp = 4 * mass.Value * length.Value * length.Value * hertz.Value * hertz.Value;
        return span.Stiffness switch
        {
            Stiffness.Bending { NewtonSquareMetres: var bending } => Bent(limp, bending, length, mass, hertz),
            Stiffness.Heard { Inharmonicity: var heard } => Scaled(limp / (1 + heard.Value), heard.Standard / (1 + heard.Value), length, mass, hertz),
            _ => Scaled(limp, 0, length, mass, hertz),
        };
    }

    /// <summary>The note that a force gives, in Hz.</summary>
    /// <param name="span">The span; of its stiffness only a known bending stiffness is used, because a heard one belongs to the force that it was heard at.</param>
    /// <param name="newtons">The force.</param>
    public static Uncertain Frequency(BeltSpan span, Uncertain newtons)
    {
        var (length, mass) = (span.LengthMetres.Value, span.Mass.KilogramsPerMetre.Value);
        var bending = span.Stiffness is Stiffness.Bending known ? known.NewtonSquareMetres : default;
        var extra = Math.PI * Math.PI * bending.Value / (length * length);
        var hertz = Math.Sqrt((newtons.Value + extra) / mass) / (2 * length);
        var share = 1 / (2 * (newtons.Value + extra));
        return new(hertz, hertz * Uncertain.Combine(
            share * newtons.Standard,
            share * Math.PI * Math.PI / (length * length) * bending.Standard,
            span.Mass.KilogramsPerMetre.Relative / 2,
            (1 + (2 * extra * share)) * span.LengthMetres.Relative));
    }

    private static Uncertain Scaled(double force, double stiffnessShare, Uncertain length, Uncertain mass, Uncertain hertz) =>
        new(force, force * Uncertain.Combine(stiffnessShare, 2 * length.Relative, mass.Relative, 2 * hertz.Relative));

    private static Uncertain Bent(double limp, Uncertain bending, Uncertain length, Uncertain mass, Uncertain hertz)
    {
        var square = length.Value * length.Value;
        var taken = Math.PI * Math.PI * bending.Value / square;
        return new(limp - taken, Uncertain.Combine(
            limp * mass.Relative,
            2 * limp * hertz.Relative,
            2 * (limp + taken) * length.Relative,
            Math.PI * Math.PI / square * bending.Standard));
    }
}
