namespace Proveout.Engine.Motion;

/// <summary>What a margin means.</summary>
public enum MarginVerdict
{
    /// <summary>Twice what is needed, or more.</summary>
    Enough,

    /// <summary>More than is needed, but less than twice.</summary>
    Thin,

    /// <summary>Less than is needed.</summary>
    LosesSteps,
}
