namespace Proveout.Workshop;

/// <summary>How far a build has come on the way into use.</summary>
/// <param name="List">What to look at.</param>
/// <param name="Found">What was found last of each item that was looked at, by item.</param>
public sealed record BuildAcceptance(AcceptanceView List, IReadOnlyDictionary<string, AcceptedItem> Found)
{
    /// <summary>How many items were last found so.</summary>
    public int CountOf(string found) => List.Items.Count(item => Found.TryGetValue(item.Id, out var accepted) && accepted.Found == found);

    /// <summary>True when everything up to the soak was looked at and is good.</summary>
    public bool IsAccepted => List.Items.Where(item => item.Phase <= AcceptancePhase.Soak).All(item => Found.TryGetValue(item.Id, out var accepted) && accepted.Found == AcceptanceAnswers.Good);
}
