using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>One direction of a recording with what was found in it.</summary>
/// <param name="Name">The axis that it stands for.</param>
/// <param name="Record">The recording.</param>
/// <param name="Direction">The direction of the sensor.</param>
/// <param name="Density">Its spectrum, or the transfer of a sweep.</param>
/// <param name="Modes">Its resonances.</param>
internal sealed record ShakenAxis(string Name, AccelerationRecord Record, DirectionRecord Direction, PowerDensity Density, IReadOnlyList<VibrationMode> Modes)
{
    // A direction with less than a tenth of the power of the strongest shakes along with it.
    private const double LeastShare = 0.1;

    /// <summary>The axes of some recordings: of one, every direction that moves; of two, x of the first and y of the second.</summary>
    public static IReadOnlyList<ShakenAxis> Of(IReadOnlyList<AccelerationRecord> records, ResonanceAsked asked) => records.Count == 1
        ? [.. Moving(records[0]).Select(direction => Of(direction.Name, records[0], direction, asked))]
        : [.. records.Zip(["x", "y"], (record, name) => Of(name, record, record.Directions.FirstOrDefault(direction => direction.Name == name) ?? Strongest(record), asked))];

    /// <summary>What to mind about which direction of the sensor was taken.</summary>
    /// <param name="isAlone">True when one recording stands for all axes.</param>
    public IEnumerable<string> Notes(bool isAlone)
    {
        var strongest = Strongest(Record);
        if (isAlone && Direction == strongest && Record.Directions.Except(Moving(Record)).Select(direction => direction.Name).ToArray() is { Length: > 0 } quiet)
            yield return $"{Record.Name}: direction {string.Join(" and ", quiet)} moves little beside {Name} and was left out.";
        if (Direction.Name != Name)
            yield return $"{Record.Name} has no direction {Name}: {Direction.Name}, which moves most, was taken for axis {Name}.";
        else if (!isAlone && strongest.Variance > 2 * Direction.Variance)
            yield return $"{Record.Name} moves more along {strongest.Name} than along {Name}: see how the sensor is turned.";
    }

    private static ShakenAxis Of(string name, AccelerationRecord record, DirectionRecord direction, ResonanceAsked asked)
    {
        var density = asked.Sweep is { } sweep ? sweep.Transfer(direction.Spectrum, Math.Sqrt(asked.Demand.LowestHertz * asked.Demand.HighestHertz)) : direction.Spectrum;
        return new(name, record, direction, density, ModeFinder.Find(record, direction, density, asked.Excitation, asked.Demand.LowestHertz, asked.Demand.HighestHertz));
    }

    private static DirectionRecord Strongest(AccelerationRecord record) => record.Directions.MaxBy(direction => direction.Variance)!;

    private static IEnumerable<DirectionRecord> Moving(AccelerationRecord record)
    {
        var most = Strongest(record).Variance;
        return record.Directions.Where(direction => direction.Variance > LeastShare * most);
    }
}
