namespace Proveout.Engine.Faults;

/// <summary>A place to touch with a lead.</summary>
/// <param name="Subject">The thing it is on, by its designation or identifier.</param>
/// <param name="Place">Which place on that thing.</param>
/// <param name="Side">Which side of a joint that is apart, such as <c>plug</c> or <c>pins</c>; empty when it is not.</param>
public sealed record CheckPoint(string Subject, string Place, string Side)
{
    /// <inheritdoc/>
    public override string ToString() => Side.Length == 0 ? $"{Subject}.{Place}" : $"{Subject}.{Place} ({Side})";
}
