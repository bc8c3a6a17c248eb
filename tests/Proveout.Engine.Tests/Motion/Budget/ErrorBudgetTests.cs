using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class ErrorBudgetTests
{
    private static readonly BudgetDirection[] Directions = [BudgetDirection.X, BudgetDirection.Y, BudgetDirection.Z];

    private static double Worst(BudgetParts parts, BudgetDirection direction) => ErrorBudget.Most((x, y) => ErrorBudget.Of(parts).WorstAt(direction, x, y));

    [Fact]
    public void Squareness_moves_y_by_its_angle_and_half_the_travel_of_x()
    {
        // 0.1 mm in 200 mm over 150 mm either way.
        var parts = new BudgetParts(300, 200) { Square = 0.1 / 200 };

        Assert.Equal(0.075, Worst(parts, BudgetDirection.Y), 12);
        Assert.Equal(0, Worst(parts, BudgetDirection.X));
        Assert.Equal(0, ErrorBudget.Of(parts).WorstAt(BudgetDirection.Y, 0.5, 0));
    }

    // What levelling leaves of u v over four corners: its least-squares plane takes u/2 + v/2 − 1/4 away.
    [Fact]
    public void Rails_that_rise_against_each_other_leave_what_no_levelling_takes_away()
    {
        const double Rise = 0.4;
        ProbePoint[] corners = [new(0, 0, 0), new(300, 0, 0), new(0, 200, 0), new(300, 200, Rise)];

        var left = PlateMap.Of(corners).Map!.Residuals.Max(Math.Abs);

        Assert.Equal(left, Worst(new BudgetParts(300, 200) { RailsRise = Rise }, BudgetDirection.Z), 12);
    }

    [Fact]
    public void A_belt_gives_way_most_in_the_middle_of_its_loop()
    {
        // E A = 10 kN, loop 1 m: two runs of 0.5 m are 40 N/mm together, 5 N move it by 0.125 mm (Hooke).
        var parts = new BudgetParts(400, 400) { Friction = 5, BeltX = (new BeltDrivenMass(10_000, 1, 1), 0.3) };

        Assert.Equal(0.125, Worst(parts, BudgetDirection.X), 9);
        Assert.True(ErrorBudget.Of(parts).WorstAt(BudgetDirection.X, 0, 0) < 0.125);
    }

    // 300 mm of aluminium, 80 K: 0.55 mm (shared reference values), half of it either way from the middle.
    [Fact]
    public void Heat_grows_a_frame_from_its_middle() =>
        Assert.Equal(0.276, Worst(new BudgetParts(300, 300) { Growth = 23e-6 * 80 }, BudgetDirection.X), 3);

    [Fact]
    public void Three_four_and_twelve_add_to_nineteen_and_to_thirteen()
    {
        var budget = ErrorBudget.Of(new BudgetParts(300, 300) { PlateResidual = 6, ProbeError = 4, HeightDrift = -12 });

        Assert.Equal(19, budget.WorstAt(BudgetDirection.Z, 0.3, 0.9), 12);
        Assert.Equal(13, budget.RootSumSquareAt(BudgetDirection.Z, 0.3, 0.9), 12);
    }

    [Fact]
    public void Independent_causes_never_exceed_the_sum_and_never_fall_below_the_largest() =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(50), Prop.ForAll<byte[]>(bytes => Holds([.. bytes.Concat(new byte[8]).Take(8)])));

    private static bool Holds(byte[] drawn)
    {
        var (square, beam, rails, rise, backlash, plate, probe, growth) = (drawn[0], drawn[1], drawn[2], drawn[3], drawn[4], drawn[5], drawn[6], drawn[7]);
        var budget = ErrorBudget.Of(new BudgetParts(300, 200)
        {
            Square = square * 1e-5,
            BeamSideways = beam * 1e-3,
            BeamUpright = beam * 1e-3,
            RailSideways = rails * 1e-3,
            RailUpright = rails * 1e-3,
            RailsRise = rise * 1e-3,
            BacklashX = backlash * 1e-3,
            BacklashY = backlash * 1e-3,
            PlateResidual = plate * 1e-3,
            ProbeError = probe * 1e-3,
            Growth = growth * 1e-6,
        });
        return Directions.All(direction => ErrorBudget.Shares.All(x => ErrorBudget.Shares.All(y =>
        {
            var (worst, independent) = (budget.WorstAt(direction, x, y), budget.RootSumSquareAt(direction, x, y));
            var largest = budget.Items.Where(item => item.Direction == direction).Select(item => item.Bound(x, y)).DefaultIfEmpty().Max();
            return independent <= worst + 1e-12 && independent >= largest - 1e-12;
        })));
    }

    // A rigid machine with signed errors inside the bounds, moved to random places: the nozzle never leaves the sum of bounds.
    [Fact]
    public void A_simulated_machine_stays_within_the_sum_of_bounds()
    {
        var random = new Random(5);
        var parts = new BudgetParts(300, 200) { Square = 5e-4, BeamSideways = 0.06, RailSideways = 0.04, BacklashX = 0.05, BacklashY = 0.03, Growth = 3e-4, RailsRise = 0.1, PlateResidual = 0.2, ProbeError = 0.01 };
        var budget = ErrorBudget.Of(parts);
        for (var trial = 0; trial < 2000; trial++)
        {
            var (u, v) = (random.NextDouble(), random.NextDouble());
            var (x, y) = ((u - 0.5) * 300, (v - 0.5) * 200);
            var offX = (Signed() * parts.RailSideways / 2) + (Signed() * parts.BacklashX / 2) + (Signed() * parts.Growth * x);
            var offY = (Signed() * parts.Square * x) + (Signed() * parts.BeamSideways / 2) + (Signed() * parts.BacklashY / 2) + (Signed() * parts.Growth * y);
            var offZ = (Signed() * parts.RailsRise * (u - 0.5) * (v - 0.5)) + (Signed() * parts.PlateResidual / 2) + (Signed() * parts.ProbeError);

            Assert.True(Math.Abs(offX) <= budget.WorstAt(BudgetDirection.X, u, v) && Math.Abs(offY) <= budget.WorstAt(BudgetDirection.Y, u, v) && Math.Abs(offZ) <= budget.WorstAt(BudgetDirection.Z, u, v));
        }

        double Signed() => (2 * random.NextDouble()) - 1;
    }
}
