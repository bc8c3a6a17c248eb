using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>Free text for people; space around it does not count.</summary>
internal sealed class TextShape : Shape<string>
{
    public static readonly TextShape Instance = new();

    public override string Fallback => "";

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out string value)
    {
        value = null;
        if (node is not ScalarNode { IsNothing: false } scalar)
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"{Quote.Of(node.Name)} should be text, but it is {node.Kind}.",
                "Write text; quotes around it are allowed.");
        else if (HasUnprintable(scalar.Text))
            problems.Add("unprintable", node.Place, $"{Quote.Of(scalar.Text)} holds a character that cannot be printed.", "Leave it out.");
        else
            value = scalar.Text.Trim();
        return value is not null;
    }

    public override Node Write(string value) => Scalar(value);

    public override JsonObject Describe(SchemaDefinitions definitions) => new() { ["type"] = SchemaDefinitions.AnyScalar() };

    private static bool HasUnprintable(string text)
    {
        foreach (var rune in text.EnumerateRunes())
            if (IsUnprintable(rune))
                return true;
        return false;
    }

    // A lone surrogate, which YAML can write as an escape, enumerates as the replacement character.
    private static bool IsUnprintable(Rune rune) =>
        (Rune.IsControl(rune) && rune.Value is not ('\n' or '\t')) || rune == Rune.ReplacementChar;
}
