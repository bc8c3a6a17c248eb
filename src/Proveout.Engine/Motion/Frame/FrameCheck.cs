using Proveout.Engine.Faults;

namespace Proveout.Engine.Motion;

/// <summary>The checks of a frame by their indices, and what a sound frame shows at each.</summary>
internal static class FrameCheck
{
    public const int Diagonals = 0;
    public const int Feet = 1;
    public const int Stops = 2;
    public const int Beam = 3;
    public const int RailMiddle = 4;
    public const int RailRise = 5;

    public static Check[] Of(FrameDesign design)
    {
        var angle = design.SquareLimit;
        return
        [
            Make("diagonals", "Diagonal A-C less B-D", "Measure both diagonals between the same edges.", -design.DiagonalDifference(angle) + (2 * design.TapeErrorMillimetres), "Equal in a frame that is square; two tape readings are in it.", 120),
            Make("feet", "Twist of the feet", "On a flat slab, put a feeler under the foot that stands off: positive under A or C, negative under B or D.", design.TwistLimitMillimetres + design.FeelerErrorMillimetres, "All four feet stand in one plane.", 60),
            Make("stops", "Gap at the right stop less the left", "Push the gantry against both stops by hand and measure the gaps with a feeler.", (design.SpanMillimetres * Math.Tan(angle)) + (2 * design.FeelerErrorMillimetres), "Both ends touch when base and beam are square.", 60),
            Make("beam-square", "Beam against the left rail, by a square", "Lay a square with a 200 mm leg between beam and left rail; positive when the right end stays behind.", (200 * angle) + design.FeelerErrorMillimetres, "The beam stands square to its rails.", 120),
            Make("rail-middle", "Rail in the middle against its ends", "Run a dial along the rail on a straight-edge: reading in the middle less the mean of both ends.", design.RailLimitMillimetres + (2 * design.DialErrorMillimetres), "The rail is straight.", 180),
            Make("rail-rise", "One rail against the other", "Let a dial on the one rail's carriage ride on the other rail: reading at the far end less at the near end.", design.RailLimitMillimetres + (2 * design.DialErrorMillimetres), "The rails lie in one plane.", 180),
            .. FrameSymptoms.Checks,
        ];
    }

    private static Check Make(string id, string title, string instruction, double half, string why, double seconds) =>
        new(id, "distance", FrameCampaign.SetUpId, title, instruction, [], "mm", new ReadingInterval(-half, half), why, seconds);
}
