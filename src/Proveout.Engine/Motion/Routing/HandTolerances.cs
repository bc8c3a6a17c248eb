namespace Proveout.Engine.Motion;

/// <summary>How well hand, eye and rule read, and how far a belt gives way. Common practice where nothing else is said; wide on purpose.</summary>
internal static class HandTolerances
{
    /// <summary>A way pushed by hand, against a rule.</summary>
    public const double WayMm = 3;

    /// <summary>A short way against a rule.</summary>
    public const double RuleMm = 0.5;

    /// <summary>Share of a way that tooth play and a slanting look add.</summary>
    public const double Share = 0.03;

    /// <summary>An angle of a mark on a pulley.</summary>
    public const double MarkDegrees = 15;

    /// <summary>Height of a belt against a rule.</summary>
    public const double HeightMm = 0.7;

    /// <summary>How far a tensioner takes up a belt.</summary>
    public const double TakeUpMm = 4;

    /// <summary>Lengthening by which a hand feels a belt lock, as a share of its length: at least; from some 10 kN per unit strain (from memory) and 10 N.</summary>
    public const double LeastGive = 0.001;

    /// <summary>The same at most: at 150 N more than a hand pushes.</summary>
    public const double MostGive = 0.015;

    /// <summary>A change of length for a millimetre that the give of a belt hides in a short move.</summary>
    public const double HiddenGive = 0.02;

    /// <summary>Share by which tension is set too high or low and still counts as set.</summary>
    public const double TensionShare = 0.25;

    /// <summary>Highest share of its tension that a slack belt still has.</summary>
    public const double SlackShare = 0.2;

    /// <summary>The sag that no slack belt exceeds.</summary>
    public const double MostSagMm = 1000;

    /// <summary>The press of 200 g hung at mid-span, in newtons.</summary>
    public const double PressNewtons = 2;
}
