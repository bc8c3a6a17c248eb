using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>The typed figures of a sounding, in SI units.</summary>
internal sealed record SoundingFigures
{
    private const double UsualMassShare = 0.03;

    // A stiffness from a data sheet is a round number.
    private const double BendingShare = 0.2;

    public double? Left { get; private init; }

    public double? Right { get; private init; }

    public double FrequencyError { get; private init; }

    public Uncertain? LeftMetres { get; private init; }

    public Uncertain? RightMetres { get; private init; }

    public BeltMass? Mass { get; private init; }

    public Stiffness.Bending? Bending { get; private init; }

    public double? TargetNewtons { get; private init; }

    public double LimitShare { get; private init; }

    public Tensioner? Screw { get; private init; }

    public double? TrialHertz { get; private init; }

    public double TrialTurns { get; private init; }

    public IReadOnlyList<Diagnostic> Problems { get; private init; } = [];

    public static SoundingFigures Read(TypedFigures typed)
    {
        var error = (typed.Read(SoundingFields.SpanError) ?? 0) / 1000;
        var left = Millimetres(typed.Read(SoundingFields.Span), error);
        var figures = new SoundingFigures
        {
            Left = typed.Read(SoundingFields.Frequency),
            Right = typed.Read(SoundingFields.OtherFrequency),
            FrequencyError = typed.Read(SoundingFields.FrequencyError) ?? 0,
            LeftMetres = left,
            RightMetres = Millimetres(typed.Read(SoundingFields.OtherSpan), error) ?? left,
            Mass = MassOf(typed),
            Bending = typed.Read(SoundingFields.Bending) is { } bending ? new(new(bending / 1000, BendingShare * bending / 1000)) : null,
            TargetNewtons = typed.Read(SoundingFields.Target),
            LimitShare = (typed.Read(SoundingFields.Limit) ?? 0) / 100,
            Screw = ScrewOf(typed),
            TrialHertz = typed.Read(SoundingFields.TrialFrequency),
            TrialTurns = typed.Read(SoundingFields.TrialTurns) ?? 0,
        };
        if (figures.TargetNewtons is not null && (figures.LeftMetres is null || figures.Mass is null))
            typed.Refuse(SoundingFields.Target, "target-without-span", "A force cannot be compared without the span's length and the belt's mass.", "Give the free length in mm and the mass in g/m, or the width.");
        if (figures.TrialHertz is not null && (figures.TrialTurns == 0 || figures.LeftMetres is null || figures.Mass is null))
            typed.Refuse(SoundingFields.TrialFrequency, "trial-without-turns", "A trial teaches nothing without the turns, the span's length and the belt's mass.", "Give all of them, or leave the trial out.");
        return figures with { Problems = typed.Problems };
    }

    private static Uncertain? Millimetres(double? length, double error) => length is { } millimetres ? Uncertain.Within(millimetres / 1000, error) : null;

    private static BeltMass? MassOf(TypedFigures typed)
    {
        var width = typed.Read(SoundingFields.Width);
        var error = typed.Read(SoundingFields.MassError);
        if (typed.Read(SoundingFields.Mass) is { } mass)
            return BeltMass.Given(LinearDensity.FromGramsPerMeter(mass), LinearDensity.FromGramsPerMeter((error ?? (UsualMassShare * mass)) / Math.Sqrt(3)));
        return width is { } millimetres ? BeltMass.Typical(Length.FromMillimeters(millimetres)) : null;
    }

    private static Tensioner? ScrewOf(TypedFigures typed)
    {
        var runs = (int)(typed.Read(SoundingFields.Runs) ?? 1);
        if (!typed.Has(SoundingFields.BeltStiffness) && !typed.Has(SoundingFields.BeltLength) && !typed.Has(SoundingFields.ScrewPitch))
            return null;
        return new Tensioner(
            typed.Require(SoundingFields.BeltStiffness),
            typed.Require(SoundingFields.BeltLength) / 1000,
            runs,
            typed.Require(SoundingFields.ScrewPitch) / 1000);
    }
}
