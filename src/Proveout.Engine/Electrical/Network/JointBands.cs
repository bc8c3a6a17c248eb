namespace Proveout.Engine.Electrical;

/// <summary>Resistances of sound contacts in ohms. They vary by a factor, not by percent, so the bands are wide.</summary>
internal static class JointBands
{
    /// <summary>Screw, lever or crimp joint: 0.2 to 10 milliohms; common practice.</summary>
    public static (double Low, double Nominal, double High) Joint => (0.0002, 0.002, 0.01);

    /// <summary>Pin and socket of a plug: 2 to 30 milliohms; common practice (IEC 60512-2-1 tests at tens of milliohms).</summary>
    public static (double Low, double Nominal, double High) Mating => (0.002, 0.01, 0.03);

    /// <summary>A jumper on two posts: 2 to 30 milliohms, as a plug.</summary>
    public static (double Low, double Nominal, double High) Jumper => Mating;
}
