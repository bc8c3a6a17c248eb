namespace Proveout.Engine.Machine;

/// <summary>Colours of conductors in words.</summary>
public static class ColourWords
{
    /// <summary>The colour in words, such as <c>green-yellow</c>.</summary>
    public static string Of(ConductorColour colour) =>
        colour == ConductorColour.GreenYellow ? "green-yellow" : colour.ToString().ToLowerInvariant();
}
