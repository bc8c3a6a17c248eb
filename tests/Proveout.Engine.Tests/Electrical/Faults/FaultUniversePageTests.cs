using System.Globalization;
using System.Text.RegularExpressions;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Faults;

/// <summary>The page docs/methods/fault-universe.md against the registers: no mistake of the trade is forgotten, and nothing is named that is not there.</summary>
public sealed partial class FaultUniversePageTests
{
    // The mistakes of the trade's catalogue, group by group: letters, and how many there are.
    private static readonly (string Group, int Count)[] Groups =
    [
        ("MA", 24), ("PE", 13), ("SR", 12), ("DC", 16), ("SE", 12), ("FA", 11), ("HE", 15), ("TS", 14),
        ("MO", 15), ("SW", 10), ("DA", 15), ("CO", 18), ("RO", 13), ("BE", 14), ("PU", 10), ("RA", 15),
    ];

    private static readonly string[] Readings = [MeterMode.Resistance.Kind, MeterMode.FourWire.Kind];

    private static readonly string Page = File.ReadAllText(Repository.Folder("docs", "methods", "fault-universe.md"));

    private static readonly Row[] Rows =
    [
        .. Page.Split('\n')
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length == 8 && Identifier().IsMatch(cells[1]))
            .Select(cells => new Row(cells[1], cells[3], cells[4], cells[5], cells[6])),
    ];

    [Fact]
    public void Every_mistake_of_the_catalogue_has_one_row() =>
        Assert.Equal(
            Groups.SelectMany(group => Enumerable.Range(1, group.Count).Select(number => string.Create(CultureInfo.InvariantCulture, $"{group.Group}{number:00}"))),
            Rows.Select(row => row.Identifier));

    [Fact]
    public void Every_kind_that_a_row_names_is_registered() =>
        Assert.All(Rows, row => Assert.Empty(Names(row.ImaginedAs).Except(MistakeKinds.All)));

    [Fact]
    public void Every_check_that_a_row_names_is_a_reading_or_a_registered_observation() =>
        Assert.All(Rows, row => Assert.Empty(Names(row.CaughtBy).Except(ObservationRules.Names).Except(Readings)));

    [Fact]
    public void Every_observation_stands_with_its_kind() =>
        Assert.All(Rows.SelectMany(row => WithKind().Matches(row.CaughtBy)), match => Assert.Equal(ObservationRules.KindOf(match.Groups[2].Value), match.Groups[1].Value));

    [Fact]
    public void Every_mistake_of_wiring_is_imagined_or_says_why_not_and_has_a_check() =>
        Assert.All(Rows, row =>
        {
            Assert.NotEmpty(row.CaughtBy);
            Assert.True(Names(row.ImaginedAs).Length > 0 == row.Prior is not "–", row.Identifier);
            Assert.Contains(row.Worst, new[] { "shock", "fire", "burn", "crush", "damage", "nuisance" });
        });

    [Fact]
    public void Every_observation_that_a_row_names_shows_a_kind_of_that_row() =>
        Assert.All(Rows.Where(row => row.Prior != "–"), row => Assert.All(Names(row.CaughtBy).Except(Readings), name =>
        {
            var observation = ObservationRules.All.Single(candidate => candidate.Name == name);
            var shown = observation.Shows.Concat(observation.Mistakes.Select(mistake => mistake.Kind));
            Assert.True(shown.Intersect(Names(row.ImaginedAs)).Any(), $"{row.Identifier}: {name}");
        }));

    [Fact]
    public void Every_mistake_that_only_an_observation_shows_is_named_with_that_observation() =>
        Assert.All(Rows, row => Assert.All(Names(row.ImaginedAs), kind =>
        {
            if (ObservationRules.All.FirstOrDefault(observation => observation.Mistakes.Any(mistake => mistake.Kind == kind)) is { } shows && Names(row.ImaginedAs)[0] == kind)
                Assert.Contains(shows.Name, Names(row.CaughtBy));
        }));

    [Fact]
    public void A_row_gives_the_prior_of_its_first_kind() =>
        Assert.All(Rows.Where(row => row.Prior != "–"), row => Assert.Equal(PriorOf(Names(row.ImaginedAs)[0]), double.Parse(row.Prior, CultureInfo.InvariantCulture)));

    [Fact]
    public void Every_registered_kind_and_observation_is_named_on_the_page()
    {
        var named = Names(Page).ToHashSet(StringComparer.Ordinal);

        Assert.Empty(MistakeKinds.All.Except(named));
        Assert.Empty(ObservationRules.Names.Except(named));
        Assert.Empty(MistakeKinds.All.Except(Rows.SelectMany(row => Names(row.ImaginedAs))));
    }

    [Fact]
    public void The_page_words_every_kind_as_coverage_does() =>
        Assert.All(
            WiringFaultRules.All.Select(rule => (rule.Kind, rule.Words)).Concat(ObservationRules.Mistakes.Select(mistake => (mistake.Kind, mistake.Words))),
            item => Assert.Contains($"| `{item.Kind}` | {item.Words} |", Page, StringComparison.Ordinal));

    private static double PriorOf(string kind) =>
        WiringFaultRules.All.FirstOrDefault(rule => rule.Kind == kind)?.Prior ?? ObservationRules.Mistakes.First(mistake => mistake.Kind == kind).Prior;

    private static string[] Names(string text) => [.. Quoted().Matches(text).Select(match => match.Groups[1].Value)];

    [GeneratedRegex(@"^[A-Z]{2}\d\d$")]
    private static partial Regex Identifier();

    [GeneratedRegex("`([a-z-]+)`")]
    private static partial Regex Quoted();

    [GeneratedRegex("([a-z]+) `([a-z-]+)`")]
    private static partial Regex WithKind();

    private sealed record Row(string Identifier, string ImaginedAs, string CaughtBy, string Prior, string Worst);
}
