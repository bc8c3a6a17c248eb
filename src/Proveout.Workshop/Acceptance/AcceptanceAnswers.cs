namespace Proveout.Workshop;

/// <summary>The answers that an item of the acceptance list takes, and how they stand in the record.</summary>
public static class AcceptanceAnswers
{
    /// <summary>As it should be.</summary>
    public const string Good = "good";

    /// <summary>Not as it should be.</summary>
    public const string NotGood = "not good";

    /// <summary>Name of the analysis under which the record keeps them.</summary>
    public const string Analysis = "acceptance";

    private const string Item = "item";
    private const string Found = "found";
    private const string Note = "note";

    /// <summary>The entry for the record.</summary>
    public static MeasurementRequest RequestOf(AcceptanceItem item, string found, string note, string person, Guid key)
    {
        ArgumentNullException.ThrowIfNull(item);
        return new(
            Analysis,
            item.Title,
            $"{(found == Good ? "As it should be." : "Not as it should be.")}{(note.Length > 0 ? $" {note}" : "")}",
            [],
            new Dictionary<string, string>(StringComparer.Ordinal) { [Item] = item.Id, [Found] = found, [Note] = note },
            null,
            person,
            key);
    }

    /// <summary>The latest answer for each item.</summary>
    public static IReadOnlyDictionary<string, AcceptedItem> Latest(IEnumerable<KeptMeasurement> measurements)
    {
        var latest = new Dictionary<string, AcceptedItem>(StringComparer.Ordinal);
        foreach (var kept in measurements.Where(kept => kept.Analysis == Analysis))
            if (kept.Typed.TryGetValue(Item, out var item) && kept.Typed.TryGetValue(Found, out var found))
                latest[item] = new(item, found, kept.Typed.GetValueOrDefault(Note, ""), kept.Person, kept.When);
        return latest;
    }
}
