namespace Proveout.Workshop;

/// <summary>A measurement that settings wait for.</summary>
/// <param name="Analysis">Which analysis gives it.</param>
/// <param name="Name">What it settles.</param>
/// <param name="How">What to do to know it.</param>
/// <param name="Applies">Whether a machine needs it.</param>
internal sealed record ExpectedMeasurement(string Analysis, string Name, string How, Func<SettingsCase, bool> Applies);
