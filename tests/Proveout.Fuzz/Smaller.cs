namespace Proveout.Fuzz;

/// <summary>Takes out of an input what a failure does not need, so that a person can see what it is about.</summary>
internal static class Smaller
{
    private const int MostTries = 1500;

    public static Finding Of(FuzzTarget target, Finding finding)
    {
        var best = finding;
        var tries = 0;
        for (var piece = Math.Max(1, finding.Input.Length / 2); piece > 0; piece /= 2)
        {
            for (var at = 0; at < best.Input.Length && tries < MostTries; tries++)
            {
                byte[] shorter = [.. best.Input[..at], .. best.Input[Math.Min(best.Input.Length, at + piece)..]];
                if (Watch.Read(target, shorter).Finding is { } same && same.Kind == finding.Kind)
                    best = same;
                else
                    at += piece;
            }
        }

        return best;
    }
}
