using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Identifiers and words of settings.</summary>
public static class SettingWords
{
    /// <summary>How well a setting is known, in words.</summary>
    public static string Of(SettingState state) => state switch
    {
        SettingState.Open => "not known yet",
        SettingState.Designed => "as designed",
        SettingState.Computed => "computed",
        _ => "measured",
    };

    /// <summary>A number in the digits that it is worth, with its unit.</summary>
    internal static string Figure(double value, string unit) => $"{SensibleDigits.Of(value)} {unit}".TrimEnd();
}
