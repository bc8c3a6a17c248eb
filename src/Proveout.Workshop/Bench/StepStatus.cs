namespace Proveout.Workshop;

/// <summary>What has become of a step.</summary>
public enum StepStatus
{
    /// <summary>Not done yet.</summary>
    Open,

    /// <summary>Read as expected.</summary>
    Passed,

    /// <summary>Read otherwise.</summary>
    Failed,

    /// <summary>Read, but the reading says nothing.</summary>
    CannotTell,

    /// <summary>Left out with a reason.</summary>
    Skipped,
}
