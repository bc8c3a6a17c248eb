using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Cli;

/// <summary>A check with what the sound machine shows.</summary>
internal sealed record CheckShape(
    string Id, string SetUp, string Meter, string Title, string Red, string Black, string Unit, IntervalShape Expected, string ExpectedWords, string Why)
{
    public static CheckShape Of(Check check) => new(
        check.Id,
        check.SetUp,
        check.Kind,
        check.Title,
        Lead(check, 0),
        Lead(check, 1),
        check.Unit,
        IntervalShape.Of(check.Expectation),
        CheckWords.Expected(check),
        check.Why);

    // A check without leads touches nothing.
    private static string Lead(Check check, int lead) => check.Points.Count > lead ? check.Points[lead].ToString() : "";
}

/// <summary>The checks of a plan, in the order to do them.</summary>
internal sealed record CheckTableShape(string Format, string Machine, IReadOnlyList<CheckShape> Checks);
