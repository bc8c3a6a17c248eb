namespace Proveout.Engine.Electrical;

/// <summary>Kinds of checks that need no meter on a dead machine.</summary>
public static class ObservationKinds
{
    /// <summary>With the eye, where need be with a lens and a light.</summary>
    public const string Look = "look";

    /// <summary>By pulling with a stated force.</summary>
    public const string Tug = "tug";

    /// <summary>By hand: turning, pressing, moving, a key.</summary>
    public const string Hand = "hand";

    /// <summary>By reading labels and print against the documents.</summary>
    public const string Label = "label";

    /// <summary>With the machine on: what it reports, or what its parts do when told.</summary>
    public const string Log = "log";

    /// <summary>Every kind.</summary>
    public static IReadOnlyList<string> All { get; } = [Look, Tug, Hand, Label, Log];
}
