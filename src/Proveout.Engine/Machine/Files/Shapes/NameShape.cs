using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A name, spelled by a rule.</summary>
internal sealed class NameShape(NameRule rule) : Shape<string>
{
    public override string Fallback => "";

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out string value)
    {
        value = null;
        if (node is not ScalarNode { IsNothing: false } scalar)
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"The name of a {rule.Kind} should stand here, but it is {node.Kind}.",
                $"Write {rule.Form}.");
        else if (IsAllowed(scalar, problems))
            value = scalar.Text;
        return value is not null;
    }

    /// <summary>True when a name follows the rule; adds a problem when not.</summary>
    public bool IsAllowed(ScalarNode name, Problems problems)
    {
        var allowed = rule.Allows(name.Text);
        if (!allowed)
            problems.Add("bad-name", name.Place, $"{Quote.Of(name.Text)} cannot be the name of a {rule.Kind}.", $"Write {rule.Form}.");
        return allowed;
    }

    public override Node Write(string value) => Scalar(value);

    public override JsonObject Describe(SchemaDefinitions definitions) =>
        new() { ["type"] = SchemaDefinitions.AnyScalar(), ["pattern"] = rule.Pattern };
}
