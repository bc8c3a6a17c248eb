using Proveout.Engine.Faults;

namespace Proveout.Cli;

/// <summary>How large the choice of the checks was, and what was left of it to search.</summary>
internal sealed record SearchShape(
    int Demands, int Candidates, int DifferentChecks, int Decided, int DemandsLeft, int ChecksLeft, int Parts, int PartsProved)
{
    public static SearchShape Of(CoverSize size) => new(
        size.Demands, size.Candidates, size.DifferentChecks, size.Decided, size.DemandsLeft, size.ChecksLeft, size.Parts, size.PartsProved);
}
