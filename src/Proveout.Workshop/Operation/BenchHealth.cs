namespace Proveout.Workshop;

/// <summary>Whether the bench can take what is entered. It holds no path, no name and nothing that was entered.</summary>
/// <param name="Version">Which Proveout this is.</param>
/// <param name="Findings">What was looked at.</param>
public sealed record BenchHealth(string Version, IReadOnlyList<HealthFinding> Findings)
{
    /// <summary>True when everything that was looked at is good.</summary>
    public bool IsReady => Findings.All(finding => finding.IsGood);
}
