using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using UnitsNet;

namespace Proveout.Engine.Tests.Motion.Belts;

/// <summary>A loop over two pulleys.</summary>
internal static class TwoPulleys
{
    private static readonly Axis Still = new("x", Length.Zero, Length.FromMillimeters(1));

    /// <summary>A loop over two toothed pulleys.</summary>
    public static BeltPath Toothed(double apartMm, int teeth, int otherTeeth, double pitchMm)
    {
        var pitch = Length.FromMillimeters(pitchMm);
        Pulley Of(string name, int count, double across) =>
            new(name, PulleyKind.Toothed, count, pitch, null, "flat", At(across), At(0), Length.Zero, false);
        return Path([Of("one", teeth, 0), Of("two", otherTeeth, apartMm)], BeltTurn.Left, BeltTurn.Left, pitch, null)!;
    }

    /// <summary>A belt without thickness over two smooth pulleys, open or crossed.</summary>
    public static BeltPath? Smooth(double apartMm, double diameterMm, double otherMm, bool crossed)
    {
        Pulley Of(string name, double diameter, double across) =>
            new(name, PulleyKind.Smooth, 0, null, Length.FromMillimeters(diameter), "flat", At(across), At(0), Length.Zero, false);
        return Path([Of("one", diameterMm, 0), Of("two", otherMm, apartMm)], BeltTurn.Left, crossed ? BeltTurn.Right : BeltTurn.Left, Length.FromMillimeters(2), Length.Zero);
    }

    private static BeltPath? Path(ValueList<Pulley> pulleys, BeltTurn one, BeltTurn two, Length pitch, Length? thick)
    {
        var belt = new Belt("belt", true, pitch, Length.FromMillimeters(6), BeltSide.Left, [new("one", one, false), new("two", two, false)]) { ToTips = thick, ToBack = thick };
        return BeltPath.At(new([Still], pulleys, [], [belt], []), belt, [0]);
    }

    private static Riding At(double millimetres) => new(Length.FromMillimeters(millimetres), []);
}
