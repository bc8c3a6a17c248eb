using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>The name of a file format and its version, as a file states them: <c>format: proveout-machine 1</c>.</summary>
/// <param name="Name">The format's name.</param>
/// <param name="Version">The version that is read and written.</param>
/// <param name="Meaning">What a file of it is called.</param>
internal sealed record FormatName(string Name, int Version, string Meaning)
{
    private const string KeyName = "format";

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name} {Version}");

    /// <summary>The key that states the format.</summary>
    public Key<TOwner> Key<TOwner>() =>
        Machine.Key<TOwner>.Needed(KeyName, "What this file is, and the version of its format.", new FormatShape(this), _ => this);

    /// <summary>False when a file states another format or version, so that its other keys mean something else; adds the problem.</summary>
    public bool IsStatedBy(Node root, Problems problems)
    {
        if (root.Find(KeyName) is not ScalarNode { IsNothing: false } stated || stated.Text == ToString())
            return true;
        var words = stated.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words is [var name, var version] && name == Name && IsNewer(version))
            problems.Add(
                "newer-format",
                stated.Place,
                $"{Quote.Of(stated.Text)} is a newer format; this Proveout reads version {Version}.",
                "Use the Proveout that wrote it, or a newer one.");
        else
            problems.Add(
                "unknown-format",
                stated.Place,
                $"{Quote.Of(stated.Text)} is not the format of a {Meaning}.",
                $"A {Meaning} says `{KeyName}: {this}`.");
        return false;
    }

    private bool IsNewer(string version) =>
        int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > Version;

    private sealed class FormatShape(FormatName format) : Shape<FormatName>
    {
        public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out FormatName value)
        {
            value = format;
            if (node is not ScalarNode { IsNothing: false })
                problems.Add(
                    "wrong-type",
                    node.NamePlace,
                    $"The format should stand here, but it is {node.Kind}.",
                    $"Write `{KeyName}: {format}`.");
            return true;
        }

        public override Node Write(FormatName value) => new ScalarNode(default, value.ToString(), plain: true);

        public override JsonObject Describe(SchemaDefinitions definitions) => new() { ["enum"] = new JsonArray(format.ToString()) };
    }
}
