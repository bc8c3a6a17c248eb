namespace Proveout.Workshop;

/// <summary>Phases in words.</summary>
public static class AcceptanceWords
{
    /// <summary>When.</summary>
    public static string Of(AcceptancePhase phase) => phase switch
    {
        AcceptancePhase.FirstRun => "First run",
        AcceptancePhase.Protection => "Each protection made to act once",
        AcceptancePhase.Soak => "Soak",
        AcceptancePhase.AfterAnHour => "After the first hour",
        AcceptancePhase.AfterTenHours => "After ten hours",
        AcceptancePhase.EveryFiftyHours => "Every fifty hours",
        _ => "Every 250 hours, once a year at least",
    };

    /// <summary>Name in data and addresses.</summary>
    public static string Id(AcceptancePhase phase) => PlainNames.Of(string.Concat(phase.ToString().Select(letter => char.IsUpper(letter) ? $" {letter}" : letter.ToString())));
}
