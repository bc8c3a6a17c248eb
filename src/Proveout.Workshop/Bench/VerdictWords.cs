using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Verdicts in words.</summary>
public static class VerdictWords
{
    /// <summary>The verdict in a word or two.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "pass",
        Verdict.Fail => "fail",
        _ => "cannot tell",
    };
}
