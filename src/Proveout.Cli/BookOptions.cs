using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>What an author says of a book.</summary>
internal sealed class BookOptions
{
    private readonly Option<string?> _licence = new("--licence") { Description = "On what terms others may use it: an SPDX identifier, or a text of your own. All rights are kept when left out.", HelpName = "TERMS" };
    private readonly Option<string[]?> _credits = new("--credit") { Description = "Whom or what it owes something to; may be given several times.", HelpName = "TEXT" };
    private readonly Option<bool> _names = new("--with-names") { Description = "Let names of people, serial number and times in." };
    private readonly Option<long[]?> _notes = new("--note") { Description = "Let in the free text of this entry of the record, which you have read; may be given several times.", HelpName = "ENTRY" };

    public void AddTo(Command command)
    {
        command.Options.Add(_licence);
        command.Options.Add(_credits);
        command.Options.Add(_names);
        command.Options.Add(_notes);
    }

    public BookRequest Read(ParseResult parse) =>
        new(parse.GetValue(_licence) ?? "", parse.GetValue(_credits) ?? [], parse.GetValue(_names), parse.GetValue(_notes) ?? []);
}
