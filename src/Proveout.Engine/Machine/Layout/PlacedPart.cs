namespace Proveout.Engine.Machine;

/// <summary>A part on its surface.</summary>
/// <param name="Part">The part.</param>
/// <param name="Surface">The surface.</param>
/// <param name="Rail">The rail that carries it; null when it is fixed to the surface itself.</param>
/// <param name="Carrier">The part that it is mounted on; null when it sits on rail or surface itself.</param>
/// <param name="Outline">The room that it takes, turned as it is mounted.</param>
/// <param name="Turn">How far it is turned.</param>
public sealed record PlacedPart(Part Part, Surface Surface, Rail? Rail, Part? Carrier, Rectangle Outline, QuarterTurn Turn)
{
    /// <summary>The room that its type asks to be kept free, with its own outline; its outline where nothing is asked for.</summary>
    public Rectangle Free => Part.Type.Clearances is { } free ? Turned(free) : Outline;

    /// <summary>Where a terminal is: at the edge that its type says, or in the middle of the part where it says none.</summary>
    public SpotMm SpotOf(string terminal)
    {
        var sides = Part.Type.Sides;
        return At(sides.Above, 0) ?? At(sides.Left, 1) ?? At(sides.Below, 2) ?? At(sides.Right, 3) ?? Outline.Middle;

        SpotMm? At(ValueList<string> names, int edge) =>
            names.TakeWhile(name => name != terminal).Count() is var at && at < names.Count ? OnEdge(edge, (at + 0.5) / names.Count) : null;
    }

    // Edges count counter-clockwise from the upper one, so that a quarter turn is a step; from a half turn on, an edge is read backwards.
    private SpotMm OnEdge(int edge, double share)
    {
        var turned = (edge + (int)Turn) % 4;
        var isUpright = turned % 2 == 1;
        // Upper and lower edges run from left to right, the others from top to bottom: a turn keeps or reverses that.
        var isReversed = (edge, Turn) switch
        {
            (_, QuarterTurn.Two) => true,
            (0 or 2, QuarterTurn.One) => true,
            (1 or 3, QuarterTurn.Three) => true,
            _ => false,
        };
        var along = isReversed ? 1 - share : share;
        return isUpright
            ? new(turned == 1 ? Outline.LeftMm : Outline.RightMm, Outline.TopMm - (along * Outline.HeightMm))
            : new(Outline.LeftMm + (along * Outline.WidthMm), turned == 0 ? Outline.TopMm : Outline.BottomMm);
    }

    private Rectangle Turned(Clearances free)
    {
        // Counter-clockwise from the upper edge.
        double[] edges = [Of(free.Above), Of(free.Left), Of(free.Below), Of(free.Right)];
        return new(Outline.LeftMm - On(1), Outline.BottomMm - On(2), Outline.RightMm + On(3), Outline.TopMm + On(0));

        double On(int edge) => edges[(edge + 4 - (int)Turn) % 4];

        static double Of(UnitsNet.Length? length) => length?.Millimeters ?? 0;
    }
}
