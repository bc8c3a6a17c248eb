using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
/// <param name="kind">What the words name, such as <c>role</c>.</param>
/// <param name="words">Each value with its word.</param>
internal sealed class WordShape<T>(string kind, params (T Value, string Word)[] words) : Shape<T>
    where T : notnull
{
    private readonly string[] _words = [.. words.Select(word => word.Word)];

    public IReadOnlyList<string> Words => _words;

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        var at = node is ScalarNode scalar ? Array.IndexOf(_words, scalar.Text) : -1;
        if (at >= 0)
            value = words[at].Value;
        else if (node is ScalarNode { IsNothing: false } wrong)
            problems.Add("unknown-word", node.Place, $"{Quote.Of(wrong.Text)} is not a {kind}.", () => Spelling.Hint(wrong.Text, _words));
        else
            problems.Add("wrong-type", node.NamePlace, $"A {kind} should stand here, but it is {node.Kind}.", Spelling.Hint("", _words));
        return at >= 0;
    }

    public override Node Write(T value) => Scalar(words.First(word => word.Value.Equals(value)).Word);

    public override JsonObject Describe(SchemaDefinitions definitions) =>
        new() { ["enum"] = new JsonArray([.. words.Select(word => JsonValue.Create(word.Word))]) };
}
