using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Something done to learn whether a setting is right.</summary>
/// <param name="Check">What to do and what is right.</param>
/// <param name="WrongBy">Which wrong settings show at it, by identifier, and what they show.</param>
internal sealed record SettingTrial(Check Check, IReadOnlyDictionary<string, ReadingInterval> WrongBy);
