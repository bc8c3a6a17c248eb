using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>The check worth most now: dead ones before live ones, whatever they cost, since safe comes before dear.</summary>
internal static class SafeNextCheck
{
    /// <summary>Index of the check; null when none tells any two explanations apart.</summary>
    /// <param name="planned">The machine.</param>
    /// <param name="posterior">What is believed.</param>
    /// <param name="done">Identifiers of the checks read, asked or left out.</param>
    /// <param name="lastRead">The check read last, where the leads therefore are; null when none was.</param>
    public static int? Of(PlannedMachine planned, Posterior posterior, IEnumerable<string> done, string? lastRead)
    {
        var dictionary = planned.Dictionary;
        var phases = dictionary.SetUps.ToDictionary(setUp => setUp.Id, setUp => (int)setUp.Phase, StringComparer.Ordinal);
        return NextCheck.InPhases(
            dictionary, posterior, done.ToHashSet(StringComparer.Ordinal), BenchPosition.After(dictionary, lastRead), check => phases[check.SetUp])?.Check;
    }
}
