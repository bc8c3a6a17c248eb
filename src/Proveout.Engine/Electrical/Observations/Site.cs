using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>One thing to look at.</summary>
/// <param name="Place">Where it is, in plain words.</param>
/// <param name="Subject">Its identifier.</param>
/// <param name="Text">What it is, in plain words.</param>
internal sealed record Site(string Place, string Subject, string Text)
{
    /// <summary>The part that it is or is on.</summary>
    public Part? Part { get; init; }

    /// <summary>The conductor that it is or that ends there.</summary>
    public Conductor? Conductor { get; init; }

    /// <summary>The connector that it is or that the end is in.</summary>
    public Connector? Connector { get; init; }

    /// <summary>The route that it is.</summary>
    public Route? Route { get; init; }

    /// <summary>What it carries.</summary>
    public NetClass Class { get; init; }

    /// <summary>Force in newtons that it must hold; null when it is not pulled.</summary>
    public double? Newtons { get; init; }

    /// <summary>True when a screw holds the end.</summary>
    public bool IsScrew =>
        Connector is null
        || Connector.Family.StartsWith("screw", StringComparison.Ordinal)
        || Connector.Family.StartsWith("clamp", StringComparison.Ordinal);

    /// <summary>True when a lever or spring holds the end.</summary>
    public bool IsLever => Connector?.Family == "lever";

    /// <summary>True when it carries mains.</summary>
    public bool IsMains => Class is NetClass.Line or NetClass.Neutral;

    /// <summary>True when it is a protective conductor.</summary>
    public bool IsProtective => Class == NetClass.ProtectiveEarth;

    /// <summary>True when the conductor carries power.</summary>
    public bool IsPower => Conductor is { } conductor && conductor.CrossSection.SquareMillimeters >= 0.5;
}
