using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Whether a figure keeps within a limit, its expanded uncertainty counted against either claim (as ISO 14253-1 has it).</summary>
internal static class Judged
{
    /// <summary>True when it surely does, false when it surely does not, null when that cannot be told.</summary>
    public static bool? Of(Uncertain figure, double limit)
    {
        var size = Math.Abs(figure.Value);
        return size + figure.Expanded <= limit ? true : size - figure.Expanded > limit ? false : null;
    }
}
