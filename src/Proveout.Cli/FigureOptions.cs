using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>An option for each figure that a use case asks for.</summary>
/// <param name="fields">The figures.</param>
internal sealed class FigureOptions(IReadOnlyList<FigureField> fields)
{
    private readonly Option<string?>[] _options = [.. fields.Select(OptionOf)];

    /// <summary>Gives a command the options.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in _options)
            command.Options.Add(option);
    }

    /// <summary>What was typed, by the name of the field.</summary>
    public IReadOnlyDictionary<string, string> TypedIn(ParseResult parse) =>
        fields.Zip(_options).ToDictionary(pair => pair.First.Name, pair => parse.GetValue(pair.Second) ?? "", StringComparer.Ordinal);

    private static Option<string?> OptionOf(FigureField field) => new($"--{field.Name}")
    {
        Description = $"{field.Label}. {field.Hint}{(field.Default.Length > 0 ? $" {field.Default} when left out." : "")}",
        HelpName = field.Unit.Length > 0 ? field.Unit : "NUMBER",
    };
}
