using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Finds the symptoms of a machine that a sentence in plain words may mean. It proposes and reports nothing by itself: a person says which it is.</summary>
public static class SymptomMatch
{
    private const int MostProposed = 8;
    private const string Prefix = "symptom-";

    // A word of the part's own name says more than the kind of thing that it is, its designation most.
    private const int ForDesignation = 8;
    private const int ForName = 3;
    private const int ForKind = 2;

    // What a thing is follows from what it does at work and at rest.
    private static readonly (string Said, string Kind)[] KindsByDeed =
    [
        ("at full output", "fan"), ("stands still", "fan"), ("holds and turns", "motor"), ("neither hums", "motor"), ("that it is told", "motor"), ("free to turn", "motor"),
        ("gets warm", "heater"), ("stays cold", "heater"), ("lights", "light"), ("stays dark", "light"), ("shows a picture", "display"),
        ("comes up", "board"), ("pulls in", "relay"), ("stays released", "relay"), ("stays in", "fuse"),
    ];

    /// <summary>The symptoms that may be meant, the likeliest first; empty when the sentence does not say what is wrong, or with what.</summary>
    /// <param name="sentence">What a person wrote.</param>
    /// <param name="symptoms">The symptoms of the machine, in its order.</param>
    public static IReadOnlyList<Check> Of(string sentence, IEnumerable<Check> symptoms)
    {
        if (TroubleWords.TroubleOf(sentence) is not { } trouble)
            return [];
        var words = TroubleWords.WordsOf(sentence);
        var scored = symptoms
            .Where(symptom => IsOf(symptom, trouble))
            .Select(symptom => (Symptom: symptom, Score: Score(symptom, words)))
            .ToArray();
        var best = scored.Select(pair => pair.Score).DefaultIfEmpty().Max();
        // A trouble of the whole machine needs no thing; every other does.
        if (best == 0 && trouble is not (Trouble.Leaks or Trouble.Tingles or Trouble.Trips or Trouble.NoStop or Trouble.Restarts))
            return [];
        return [.. scored.Where(pair => pair.Score == best).Select(pair => pair.Symptom).DistinctBy(symptom => symptom.Title).Take(MostProposed)];
    }

    private static bool IsOf(Check symptom, Trouble trouble)
    {
        var kind = symptom.Id.StartsWith(Prefix, StringComparison.Ordinal) ? symptom.Id[Prefix.Length..] : symptom.Id;
        return trouble switch
        {
            Trouble.Dead => Is("works-"),
            Trouble.AlwaysOn => Is("rests-") || Is("off-"),
            Trouble.Hums => Is("quiet-"),
            Trouble.Backwards => Is("direction-"),
            Trouble.Trips => Is("stays-in-"),
            Trouble.Leaks => Is("residual-"),
            Trouble.Tingles => Is("tingle-"),
            Trouble.NoStop => Is("stop-"),
            _ => Is("released-"),
        };

        bool Is(string start) => kind.StartsWith(start, StringComparison.Ordinal);
    }

    private static int Score(Check symptom, HashSet<string> said)
    {
        var title = TroubleWords.WordsOf(symptom.Title);
        var own = title.Where(said.Contains).ToArray();
        var kinds = KindsOf(symptom.Title).Count(said.Contains);
        return own.Where(word => word.Length > 2 || IsDesignation(word)).Sum(word => IsDesignation(word) ? ForDesignation : TroubleWords.IsThing(word) ? ForKind : NameWord(word))
            + (ForKind * kinds);
    }

    // Small words of every sentence say nothing of a part.
    private static int NameWord(string word) => word is "the" or "that" or "way" or "and" or "not" or "off" or "turns" or "stays" or "nor" ? 0 : ForName;

    private static bool IsDesignation(string word) => word.Length is >= 2 and <= 4 && char.IsAsciiLetterLower(word[0]) && word[1..].All(char.IsAsciiDigit);

    private static IEnumerable<string> KindsOf(string title) =>
        KindsByDeed.Where(row => title.Contains(row.Said, StringComparison.Ordinal)).Select(row => row.Kind);
}
