namespace Proveout.Engine.Motion;

/// <summary>How far a corner is from where it should be.</summary>
/// <param name="Point">The corner.</param>
/// <param name="Right">To the right, in mm.</param>
/// <param name="Back">To the back.</param>
/// <param name="Up">Up.</param>
public sealed record SpaceOffset(string Point, Uncertain Right, Uncertain Back, Uncertain Up)
{
    /// <summary>The distance; its uncertainty is that of all three together, so that no direction is taken for better known than it is.</summary>
    public Uncertain Distance => new(Uncertain.Combine(Right.Value, Back.Value, Up.Value), Uncertain.Combine(Right.Standard, Back.Standard, Up.Standard));
}
