using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Why someone is not let in, or a change of who may come in is refused. What is wrong with a name or a password is never told apart.</summary>
internal static class AccessRefusals
{
    /// <param name="asksForCodes">Whether the way in has a field for codes; the words are the same for everybody.</param>
    public static Diagnostic WrongPassword(bool asksForCodes) => asksForCodes
        ? Of("sign-in", "Name, password and code do not fit together.", "Type all again, with the code that your authenticator shows now: each is taken once. Whoever runs the bench can set a new password, `proveout people password NAME`, or take a second factor off, `proveout people second-factor-off NAME`.")
        : Of("sign-in", "Name and password do not fit together.", "Type both again. Whoever runs the bench can set a new password: `proveout people password NAME`.");

    public static Diagnostic SecondFactorOn() => Of("second-factor-on", "You have a second factor already.", "Take it off first, if your authenticator is to get another key.");

    public static Diagnostic SecondFactorOff() => Of("second-factor-off", "There is no second factor to change.", "Put one on first.");

    public static Diagnostic NoKeyWaits() => Of("no-key-waits", "No key waits for its first code.", "A new key waits ten minutes. Make another one, and delete the old one in your authenticator.");

    public static Diagnostic WrongFirstCode() => Of("first-code", "This is not the code of now.", "Type the six digits that your authenticator shows now. If they are refused again, see that the clocks of your device and of the bench's computer are right.");

    public static Diagnostic NoSecondFactor(string name) => Of("no-second-factor", $"{name} has no second factor.", "`proveout people list` shows who has one.");

    public static Diagnostic WrongCode() => Of("join-code", "This code opens nothing.", "A code lasts ten minutes and mostly for one device; where you have a second factor, the code of your authenticator belongs to it. Ask at the bench for a new one: `proveout people join NAME`.");

    public static Diagnostic TooMany(TimeSpan wait) => Of(
        "too-many-tries",
        "There were too many tries.",
        string.Create(CultureInfo.InvariantCulture, $"Wait {Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds))} seconds, then try again."));

    public static Diagnostic NoName(string name) => Of("person-name", $"{Quote.Of(name)} cannot be a name.", $"Give a name of at most {PersonName.Longest} characters on one line.");

    public static Diagnostic NameTaken(string name) => Of("person-known", $"There is a {name} already.", "Give another name, or change the role: `proveout people role NAME ROLE`.");

    public static Diagnostic NoSuchPerson(string name) => Of("no-such-person", $"Nobody here is called {name}.", "`proveout people list` shows who may come in.");

    private static Diagnostic Of(string rule, string message, string mend) => new(rule, new SourcePlace("people", 0, 0), message, mend);
}
