using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A number above zero without a unit: a count, or a ratio.</summary>
/// <param name="name">What it is called.</param>
/// <param name="most">The highest that is no slip.</param>
/// <param name="isWhole">True when it counts something.</param>
internal sealed class NumberShape(string name, double most, bool isWhole) : Shape<double>
{
    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out double value)
    {
        value = 0;
        if (node is not ScalarNode { IsNothing: false, Text: var text })
            problems.Add("wrong-type", node.NamePlace, $"A {name} should stand here, but it is {node.Kind}.", Mend);
        else if (!double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value))
            problems.Add("not-a-number", node.Place, $"{Quote.Of(text)} is not a {name}.", Mend);
        else if (!(value > 0) || value > most || (isWhole && value != Math.Floor(value)))
            problems.Add("out-of-range", node.Place, $"{Quote.Of(text)} cannot be a {name}.", Mend);
        else
            return true;
        return false;
    }

    public override Node Write(double value) => new ScalarNode(default, DecimalDigits.Of(value).Shift(0).ToString(), plain: true);

    public override JsonObject Describe(SchemaDefinitions definitions) =>
        new() { ["type"] = isWhole ? "integer" : "number", ["exclusiveMinimum"] = 0, ["maximum"] = most };

    private string Mend => string.Create(CultureInfo.InvariantCulture, $"Write a {(isWhole ? "whole number" : "number")} above zero and not above {most}.");
}
