using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What a test piece says of the machine, in words.</summary>
internal static class SizeWords
{
    /// <summary>Name and unit of a quantity, and what turns it into that unit.</summary>
    public static (string Name, string Unit, double Factor) Of(PieceQuantity quantity) => quantity switch
    {
        PieceQuantity.ScaleX => ("Length along X", "mm in 100 mm", 100),
        PieceQuantity.ScaleY => ("Length along Y", "mm in 100 mm", 100),
        PieceQuantity.ScaleZ => ("Height", "mm in 100 mm", 100),
        PieceQuantity.SkewXY => ("Y leans towards +X", "mm in 100 mm", 100),
        PieceQuantity.SkewXZ => ("Z leans towards +X", "mm in 100 mm", 100),
        PieceQuantity.SkewYZ => ("Z leans towards +Y", "mm in 100 mm", 100),
        PieceQuantity.Walls => ("Growth of walls, both sides together", "mm", 1),
        PieceQuantity.Height => ("Growth of heights, whatever the height", "mm", 1),
        PieceQuantity.SlantsAlongX => ("Growth between slants of the upright along X", "mm", 1),
        _ => ("Growth between slants of the upright along Y", "mm", 1),
    };

    /// <summary>The beginning of a finding.</summary>
    public static string Subject(PieceQuantity quantity, UncertaintyBudget budget)
    {
        var (_, unit, factor) = Of(quantity);
        var size = SensibleDigits.Of(Uncertain.WithExpanded(factor * Math.Abs(budget.Value), factor * budget.Expanded), unit);
        var isMore = budget.Value >= 0;
        var angle = $"{SensibleDigits.Of(Math.Abs(Math.Atan(budget.Value)) * 180 / Math.PI, 2)}°";
        return quantity switch
        {
            PieceQuantity.ScaleX => $"X is {size} too {(isMore ? "long" : "short")}",
            PieceQuantity.ScaleY => $"Y is {size} too {(isMore ? "long" : "short")}",
            PieceQuantity.ScaleZ => $"Z is {size} too {(isMore ? "long" : "short")}",
            PieceQuantity.SkewXY => $"Y leans towards {(isMore ? "+X" : "-X")} by {size} ({angle})",
            PieceQuantity.SkewXZ => $"Z leans towards {(isMore ? "+X" : "-X")} by {size} ({angle})",
            PieceQuantity.SkewYZ => $"Z leans towards {(isMore ? "+Y" : "-Y")} by {size} ({angle})",
            PieceQuantity.Walls => isMore ? $"Outside lengths are {size} too long and inside ones as much too short, whatever their length" : $"Outside lengths are {size} too short and inside ones as much too long, whatever their length",
            _ => $"All heights are {size} too {(isMore ? "high" : "low")}, whatever their height",
        };
    }

    /// <summary>What to do about a quantity.</summary>
    public static string Step(PieceQuantity quantity, UncertaintyBudget budget, PieceMaking making, double? stepsNow)
    {
        var half = SensibleDigits.Of(Math.Abs(budget.Value) / 2, 2);
        var whole = SensibleDigits.Of(Math.Abs(budget.Value), 2);
        return quantity switch
        {
            PieceQuantity.ScaleX => Stretch("X", budget, stepsNow),
            PieceQuantity.ScaleY => Stretch("Y", budget, stepsNow),
            PieceQuantity.ScaleZ => Stretch("Z", budget, stepsNow),
            PieceQuantity.SkewXY => Shear("Y", "X", budget, "At the frame and the gantry first: the page on square, flat and straight says which corner to push. "),
            PieceQuantity.SkewXZ => Shear("Z", "X", budget, "At the uprights first: set them square to the plate along X. "),
            PieceQuantity.SkewYZ => Shear("Z", "Y", budget, "At the uprights first: set them square to the plate along Y. "),
            PieceQuantity.Walls when making == PieceMaking.Milled => $"Give the cutter's diameter {whole} mm {(budget.Value > 0 ? "smaller" : "larger")} than it is set: outside lengths shrink by that, inside ones grow by it.",
            PieceQuantity.Walls => $"Set the flow right first, and measure again. If walls still stand {half} mm too far {(budget.Value > 0 ? "out" : "in")} each, let the preparation move them by that.",
            _ when making == PieceMaking.Milled => $"Set the zero of the height {whole} mm {(budget.Value > 0 ? "lower" : "higher")}.",
            _ => $"Start {whole} mm {(budget.Value > 0 ? "nearer to" : "further from")} the plate, if the first layer still sticks; if it does not, leave it and mind it in the drawing.",
        };
    }

    private static string Stretch(string axis, UncertaintyBudget budget, double? stepsNow)
    {
        if (ScaleCause.Of(1 + budget.Value, budget.Expanded) is { } cause)
            return $"{axis} is off by a ratio that a wrong part or setting makes ({cause.Words}). Set that right; do not stretch it away.";
        var ratio = 1 / (1 + budget.Value);
        var factor = PieceClaim.View(budget.Through(ratio, ratio * ratio), "").Words;
        return stepsNow is { } steps
            ? $"Set the steps for each mm of {axis} from {SensibleDigits.Of(steps, 6)} to {PieceClaim.View(budget.Through(steps * ratio, steps * ratio * ratio), "").Words}."
            : $"Multiply the steps for each mm of {axis} by {factor}.";
    }

    private static string Shear(string leaning, string towards, UncertaintyBudget budget, string first) =>
        $"{first}What is left the controller may take out: for each mm of {leaning} shift {towards} by {PieceClaim.View(budget with { Value = -budget.Value }, "mm").Words}.";
}
