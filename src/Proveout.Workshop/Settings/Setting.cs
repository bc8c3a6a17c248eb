namespace Proveout.Workshop;

/// <summary>One value that whoever sets up a controller has to know.</summary>
/// <param name="Id">Identifier, lower case with hyphens; unique on a sheet.</param>
/// <param name="Name">What it is, in the words of the trade.</param>
/// <param name="Value">The value with its unit and uncertainty, rounded to the safe side where it protects; empty while it is open.</param>
/// <param name="State">How well it is known.</param>
/// <param name="From">Where it comes from.</param>
/// <param name="Later">Which later reading would change it; for an open one, what to do to know it.</param>
public sealed record Setting(string Id, string Name, string Value, SettingState State, string From, string Later)
{
    /// <summary>The value as a number; null when it is not one.</summary>
    public double? Number { get; init; }

    /// <summary>Expanded uncertainty of the number, about 95 of 100 cases; null when it is not known.</summary>
    public double? Expanded { get; init; }

    /// <summary>Unit of the number; empty when it has none.</summary>
    public string Unit { get; init; } = "";
}
