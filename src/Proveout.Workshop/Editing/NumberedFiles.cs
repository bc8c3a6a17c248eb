using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Proveout.Workshop;

/// <summary>Things that are kept in numbered files of a folder and never change.</summary>
/// <typeparam name="T">The things.</typeparam>
/// <param name="folder">The folder; it is made with the first of them.</param>
/// <param name="word">What the files' names begin with.</param>
internal sealed class NumberedFiles<T>(string folder, string word)
    where T : class
{
    private static readonly JsonSerializerOptions Format = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    private readonly ConcurrentDictionary<int, T?> _heads = new();

    /// <summary>The number that the next one gets.</summary>
    public int Next => Numbers().LastOrDefault() + 1;

    /// <summary>All of them in the order of their numbers, each as short as it is made.</summary>
    public IReadOnlyList<T> Heads(Func<T, T> shortened) =>
        [.. Numbers().Select(number => _heads.GetOrAdd(number, _ => Read(number) is { } found ? shortened(found) : null)).OfType<T>()];

    /// <summary>One of them; null when there is none of that number or its file is damaged.</summary>
    public T? Read(int number)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(File.ReadAllBytes(PathOf(number)), Format);
        }
        catch (Exception exception) when (exception is IOException or JsonException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>The first number behind another that is free, or taken by one that can be read: a damaged file keeps its number and its bytes.</summary>
    public int After(int number)
    {
        do
            number++;
        while (File.Exists(PathOf(number)) && Read(number) is null);
        return number;
    }

    /// <summary>Adds one; false when there is one of that number already.</summary>
    public bool TryAdd(int number, T thing)
    {
        Directory.CreateDirectory(folder);
        return WholeFile.TryCreate(PathOf(number), JsonSerializer.SerializeToUtf8Bytes(thing, Format));
    }

    private IEnumerable<int> Numbers() => !Directory.Exists(folder) ? [] : Directory.EnumerateFiles(folder, $"{word}-*.json")
        .Select(file => int.TryParse(Path.GetFileNameWithoutExtension(file)[(word.Length + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0)
        .Where(number => number > 0)
        .Order();

    private string PathOf(int number) => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{word}-{number:D6}.json"));
}
