using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Why someone is not let in, or a change of who may come in is refused. What is wrong with a name or a password is never told apart.</summary>
internal static class AccessRefusals
{
    public static Diagnostic WrongPassword() => Of("sign-in", "Name and password do not fit together.", "Type both again. Whoever runs the bench can set a new password: `proveout people password NAME`.");

    public static Diagnostic WrongCode() => Of("join-code", "This code opens nothing.", "A code lasts ten minutes and mostly for one device. Ask at the bench for a new one: `proveout people join NAME`.");

    public static Diagnostic TooMany(TimeSpan wait) => Of(
        "too-many-tries",
        "There were too many tries.",
        string.Create(CultureInfo.InvariantCulture, $"Wait {Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds))} seconds, then try again."));

    public static Diagnostic NoName(string name) => Of("person-name", $"{Quote.Of(name)} cannot be a name.", $"Give a name of at most {PersonName.Longest} characters on one line.");

    public static Diagnostic NameTaken(string name) => Of("person-known", $"There is a {name} already.", "Give another name, or change the role: `proveout people role NAME ROLE`.");

    public static Diagnostic NoSuchPerson(string name) => Of("no-such-person", $"Nobody here is called {name}.", "`proveout people list` shows who may come in.");

    private static Diagnostic Of(string rule, string message, string mend) => new(rule, new SourcePlace("people", 0, 0), message, mend);
}
