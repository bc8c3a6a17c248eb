using System.CommandLine;
using System.CommandLine.Parsing;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Arguments and options of the commands of people.</summary>
internal static class PeopleWords
{
    public static Argument<string> Name() => new("NAME") { Description = "The person's name, as it stands on entries." };

    public static Argument<string> RoleWord()
    {
        var role = new Argument<string>("ROLE") { Description = "builder (enters), checker (signs off what others entered) or reader." };
        role.Validators.Add(result => Require(result, result.Tokens));
        return role;
    }

    public static Option<string> Role(bool isRequired)
    {
        var role = new Option<string>("--role") { Description = "builder (enters), checker (signs off what others entered) or reader.", HelpName = "ROLE", Required = isRequired };
        role.Validators.Add(result => Require(result, result.Tokens));
        return role;
    }

    public static AccessRole RoleOf(string word) => RolePolicy.OfWord(word) ?? throw new ArgumentException("The word was looked at when the command was read.", nameof(word));

    private static void Require(SymbolResult result, IReadOnlyList<Token> tokens)
    {
        foreach (var token in tokens)
            if (RolePolicy.OfWord(token.Value) is null)
                result.AddError($"`{token.Value}` is not a role. Give one of: {string.Join(", ", RolePolicy.Words)}.");
    }
}
