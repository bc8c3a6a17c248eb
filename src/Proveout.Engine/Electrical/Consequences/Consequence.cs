using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What a fault does when first energised: how bad, and in a sentence.</summary>
/// <param name="Severity">How bad.</param>
/// <param name="Sentence">What happens.</param>
public sealed record Consequence(Severity Severity, string Sentence)
{
    /// <summary>The worse of two.</summary>
    public static Consequence Worse(Consequence one, Consequence two) => two.Severity > one.Severity ? two : one;
}
