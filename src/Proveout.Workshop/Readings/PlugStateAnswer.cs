namespace Proveout.Workshop;

/// <summary>What a meter shows between two terminals, depending on what is plugged.</summary>
/// <param name="ShownOhms">What was seen, in ohms; null when nothing was.</param>
/// <param name="States">The states: all mated first, all apart last.</param>
public sealed record PlugStateAnswer(double? ShownOhms, IReadOnlyList<PlugStateReading> States)
{
    /// <summary>True when a reading was given and no state of the plugs explains it.</summary>
    public bool FitsNowhere => ShownOhms is not null && States.All(state => state.Fits == false);

    /// <summary>Whether what was seen is right, in a sentence; empty when nothing was given.</summary>
    public string Verdict
    {
        get
        {
            if (ShownOhms is null)
                return "";
            string[] fitting = [.. States.Where(state => state.Fits == true).Select(state => $"\"{state.Both.SetUp.Title}\"")];
            return fitting.Length == 0
                ? "It is right in none of these states: something is wrong, or a finger touched a tip."
                : fitting.Length == States.Count
                    ? "It is right whatever is plugged."
                    : $"It is right only in this state: {string.Join(", or ", fitting)}. Look what is plugged.";
        }
    }
}
