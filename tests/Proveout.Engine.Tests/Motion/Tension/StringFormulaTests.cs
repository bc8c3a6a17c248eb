using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;
using UnitsNet;

namespace Proveout.Engine.Tests.Motion;

public sealed class StringFormulaTests
{
    [Theory]
    // A maker's printed example for a ribbed belt (shared reference values, 5.1, S31): exact 615.454 N, the page rounds down to 610.
    [InlineData(0.11, 0.17, 220, 615.454)]
    [InlineData(0.11, 0.17, 221.522, 624.0)]
    // Computed with numpy from the formula (reference values 5.1).
    [InlineData(0.0084, 0.15, 115.011, 10)]
    [InlineData(0.0084, 0.15, 162.650, 20)]
    [InlineData(0.0084, 0.25, 97.590, 20)]
    [InlineData(0.0126, 0.15, 132.803, 20)]
    [InlineData(0.0084, 0.15, 110, 9.1476)]
    public void A_limp_span_pulls_as_its_note_says(double mass, double length, double hertz, double newtons)
    {
        var span = Span(mass, length);
        Assert.Equal(newtons, StringFormula.Force(span, new(hertz, 0)).Value, 2e-5 * newtons);
        Assert.Equal(hertz, StringFormula.Frequency(span, new(newtons, 0)).Value, 1e-5 * hertz);
    }

    [Theory]
    // EI 1e-3 N·m², L 0.15 m, 8.4 g/m (reference values 5.1, computed): what the stiff span sounds.
    [InlineData(5, 84.817)]
    [InlineData(10, 117.506)]
    [InlineData(20, 164.424)]
    public void A_stiff_span_sounds_higher_and_the_known_stiffness_is_taken_off(double newtons, double hertz)
    {
        var stiff = Span(0.0084, 0.15) with { Stiffness = new Stiffness.Bending(new(1e-3, 0)) };
        Assert.Equal(hertz, StringFormula.Frequency(stiff, new(newtons, 0)).Value, 0.001);
        Assert.Equal(newtons, StringFormula.Force(stiff, new(hertz, 0)).Value, 0.001);
    }

    [Fact]
    public void Stiffness_that_was_heard_is_taken_off_as_the_known_one_is()
    {
        var inharmonicity = Math.PI * Math.PI * 1e-3 / (10 * 0.15 * 0.15);
        var heard = Span(0.0084, 0.15) with { Stiffness = new Stiffness.Heard(new(inharmonicity, 0)) };
        Assert.Equal(10, StringFormula.Force(heard, new(117.506, 0)).Value, 0.001);
    }

    [Fact]
    public void The_whole_way_from_a_sound_to_a_force_gives_the_force_of_the_made_span()
    {
        var inharmonicity = Math.PI * Math.PI * 1e-3 / (10 * 0.15 * 0.15);
        var pitch = PitchFinder.Find(new SyntheticPluck(117.506) { Inharmonicity = inharmonicity, NoiseRatioDecibels = 25 }.Recording()).Value!;
        var span = Span(0.0084, 0.15) with { Stiffness = new Stiffness.Heard(new(pitch.Inharmonicity, pitch.StandardInharmonicity)) };
        var force = StringFormula.Force(span, new(pitch.FundamentalHertz, pitch.StandardHertz));
        Assert.InRange(Math.Abs(force.Value - 10), 0, force.Expanded);
        Assert.InRange(force.Expanded, 0, 0.2);
    }

    [Fact]
    public void The_uncertainty_of_the_force_is_the_law_of_propagation()
    {
        // dT/T = 2 df/f, 2 dL/L, dm/m (reference values 5.1): 1 %, 2/3 % and 5 % of 9.1476 N.
        var span = new BeltSpan(new(0.15, 0.0005), BeltMass.Given(LinearDensity.FromGramsPerMeter(8.4), LinearDensity.FromGramsPerMeter(0.42)));
        var force = StringFormula.Force(span, new(110, 0.55));
        Assert.Equal(9.1476 * Math.Sqrt((0.01 * 0.01) + Math.Pow(0.001 / 0.15, 2) + (0.05 * 0.05)), force.Standard, 4);
    }

    [Fact]
    public void Propagation_agrees_with_differences_of_the_formula_itself() => Prop.ForAll(Inputs().ToArbitrary(), input =>
    {
        var (mass, length, hertz, bending) = input;
        double Force(double m, double l, double f, double ei) =>
            StringFormula.Force(Span(m, l) with { Stiffness = new Stiffness.Bending(new(ei, 0)) }, new(f, 0)).Value;
        var expected = Uncertain.Combine(
            (Force(mass * 1.0001, length, hertz, bending) - Force(mass * 0.9999, length, hertz, bending)) / 2e-4 * 0.01,
            (Force(mass, length * 1.0001, hertz, bending) - Force(mass, length * 0.9999, hertz, bending)) / 2e-4 * 0.01,
            (Force(mass, length, hertz * 1.0001, bending) - Force(mass, length, hertz * 0.9999, bending)) / 2e-4 * 0.01,
            (Force(mass, length, hertz, bending * 1.0001) - Force(mass, length, hertz, bending * 0.9999)) / 2e-4 * 0.01);
        var span = new BeltSpan(
            new(length, 0.01 * length),
            BeltMass.Given(LinearDensity.FromKilogramsPerMeter(mass), LinearDensity.FromKilogramsPerMeter(0.01 * mass)),
            new Stiffness.Bending(new(bending, 0.01 * bending)));
        return Math.Abs(StringFormula.Force(span, new(hertz, 0.01 * hertz)).Standard - expected) <= 1e-6 * expected;
    }).QuickCheckThrowOnFailure();

    [Fact]
    public void Note_and_force_are_each_others_inverse() => Prop.ForAll(Inputs().ToArbitrary(), input =>
    {
        var (mass, length, hertz, bending) = input;
        var span = Span(mass, length) with { Stiffness = new Stiffness.Bending(new(bending, 0)) };
        var force = StringFormula.Force(span, new(hertz, 0.002 * hertz));
        var back = StringFormula.Frequency(span, new(force.Value, 0));
        return Math.Abs(back.Value - hertz) <= 1e-9 * hertz;
    }).QuickCheckThrowOnFailure();

    [Fact]
    public void A_weighed_belt_is_known_better_than_a_guessed_one()
    {
        var weighed = BeltMass.Weighed(Mass.FromGrams(8.1), Mass.FromGrams(0.06), Length.FromMeters(1), Length.FromMillimeters(1));
        var guessed = BeltMass.Typical(Length.FromMillimeters(6));
        Assert.Equal(0.0081, weighed.KilogramsPerMetre.Value, 12);
        Assert.InRange(weighed.KilogramsPerMetre.Relative, 0.007, 0.008);
        Assert.Equal(0.0081, guessed.KilogramsPerMetre.Value, 12);
        Assert.InRange(guessed.KilogramsPerMetre.Expanded / guessed.KilogramsPerMetre.Value, 0.2, 0.25);
        Assert.True(guessed.IsGuessed);
    }

    private static BeltSpan Span(double mass, double length) =>
        new(new(length, 0), BeltMass.Given(LinearDensity.FromKilogramsPerMeter(mass), LinearDensity.Zero));

    private static Gen<(double Mass, double Length, double Hertz, double Bending)> Inputs() =>
        from mass in Gen.Choose(5, 30)
        from length in Gen.Choose(80, 500)
        from hertz in Gen.Choose(60, 400)
        from bending in Gen.Choose(1, 5)
        select (mass / 1000.0, length / 1000.0, (double)hertz, bending * 1e-5);
}
