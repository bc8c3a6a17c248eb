namespace Proveout.Engine.Motion;

/// <summary>What became of a resonance after something was changed.</summary>
/// <param name="Before">As it was; null when it is new.</param>
/// <param name="After">As it is; null when it is gone.</param>
public sealed record ModeChange(VibrationMode? Before, VibrationMode? After)
{
    // Stiffness would have to change by two thirds for a resonance to move further; beyond it is another one.
    private const double MostMove = 0.3;

    /// <summary>By how much its frequency rose, in Hz; null when there are not two.</summary>
    public Uncertain? Rise => Before is null || After is null ? null
        : new(After.Hertz.Value - Before.Hertz.Value, Uncertain.Combine(After.Hertz.Standard, Before.Hertz.Standard));

    /// <summary>Its acceleration after over before; null when there are not two, or the damping of one cannot be told.</summary>
    public Uncertain? Growth
    {
        get
        {
            if (Before?.DampingRatio is not { } first || After?.DampingRatio is not { } second)
                return null;
            var ratio = After.Acceleration / Before.Acceleration;
            return new(ratio, ratio / 2 * Uncertain.Combine(Before.Height.Relative, After.Height.Relative, first.Relative, second.Relative));
        }
    }

    /// <summary>By how much its damping ratio rose; null when it is not known of both.</summary>
    public Uncertain? DampingRise => Before?.DampingRatio is { } before && After?.DampingRatio is { } after
        ? new(after.Value - before.Value, Uncertain.Combine(after.Standard, before.Standard))
        : null;

    /// <summary>Pairs the resonances of two recordings: the nearest frequencies first.</summary>
    public static IReadOnlyList<ModeChange> Between(IReadOnlyList<VibrationMode> before, IReadOnlyList<VibrationMode> after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var pairs =
            from first in before
            from second in after
            let apart = Math.Abs(Math.Log(second.Hertz.Value / first.Hertz.Value))
            where apart <= Math.Log(1 + MostMove)
            orderby apart
            select (First: first, Second: second);
        List<ModeChange> changes = [];
        foreach (var (first, second) in pairs)
            if (changes.All(change => change.Before != first && change.After != second))
                changes.Add(new(first, second));
        changes.AddRange(before.Where(mode => changes.All(change => change.Before != mode)).Select(mode => new ModeChange(mode, null)).ToArray());
        changes.AddRange(after.Where(mode => changes.All(change => change.After != mode)).Select(mode => new ModeChange(null, mode)).ToArray());
        return [.. changes.OrderBy(change => (change.Before ?? change.After)!.Hertz.Value)];
    }
}
