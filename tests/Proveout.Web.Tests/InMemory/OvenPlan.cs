using Proveout.Engine.Faults;
using Proveout.Workshop;

namespace Proveout.Web.Tests.InMemory;

/// <summary>A small oven of our own invention with checks worked out by hand, so that pages can be tested without an engine.</summary>
internal static class OvenPlan
{
    public static readonly MachineSummary Machine = new("small-oven", "Small oven", "A box that keeps 60 °C.", 4, 7, true);

    private static readonly SetUp Isolated = new(
        "isolated",
        "Supply off, plug pulled",
        ["Pull the mains plug and keep it in sight.", "Switch the main switch on, so that its contacts are closed.", "Zero the leads."],
        ["Mains voltage kills. Work only with the plug pulled, and prove dead before you touch.", "Local codes and licensed practice come first."],
        120);

    private static readonly SetUp Apart = new(
        "control-apart",
        "Control plug pulled",
        ["Pull plug CONTROL off the relay K1."],
        ["Mains voltage kills. Keep the mains plug pulled."],
        30);

    public static readonly IReadOnlyList<Check> Checks =
    [
        Make("bond-panel", Isolated, "Inlet earth to rear panel", ("X1", "PE"), ("F1", "stud"), "Ω", 0, 0.5, "The bonding wire is short and thick."),
        Make("line-to-relay", Isolated, "Inlet line to relay", ("X1", "L-OUT"), ("K1", "1"), "Ω", 0, 1, "One wire and a closed switch lie between."),
        Make("line-to-neutral", Isolated, "Inlet line to neutral", ("X1", "L-OUT"), ("X1", "N-OUT"), "Ω", ReadingInterval.OverRange, ReadingInterval.OverRange, "The relay is open, so nothing joins the two."),
        Make("heater", Isolated, "Plate heater", ("E1", "1"), ("E1", "2"), "Ω", 98.2, 113.5, "The element has 105.8 ohm within 7 %."),
        Make("coil", Apart, "Relay control input", ("K1", "3"), ("K1", "4"), "Ω", 900, 1100, "Its input resistor has 1 kohm."),
        Make("sensor", Apart, "Temperature sensor", ("B1", "1"), ("B1", "2"), "Ω", 90e3, 115e3, "It has 100 kohm at 25 °C."),
    ];

    public static PlanView View() => new(
        Machine,
        [.. Checks.GroupBy(check => SetUpOf(check)).Select(group => new PlanGroup(group.Key, [.. group.Select(Planned)]))],
        [new("Conductor missing", 7, 7), new("End on a neighbouring terminal", 9, 8), new("Poor joint", 14, 5)],
        [new("A joint of 0.05 to 5 ohm beside a heater cannot be told from a good one.", "Tug each wire, and look for bare strands.", Severity.Fire, ["The joint of W4 at E1.1 is poor.", "The joint of W5 at E1.2 is poor."], 9)],
        24, 30, 20, 21, 13.2, "No cheaper plan catches the same mistakes: proved.");

    public static SetUp SetUpOf(Check check) => check.SetUp == Isolated.Id ? Isolated : Apart;

    public static string Expected(Check check) => check.Id switch
    {
        "bond-panel" => "at most 0.5 Ω",
        "line-to-relay" => "at most 1.0 Ω",
        "line-to-neutral" => "OL (over range)",
        "heater" => "98.2 Ω to 113.5 Ω",
        "coil" => "0.90 kΩ to 1.10 kΩ",
        _ => "90 kΩ to 115 kΩ",
    };

    private static PlannedCheck Planned(Check check, int index) => new(Checks.IndexOf(check) + 1, check, Expected(check), 3);

    private static int IndexOf(this IReadOnlyList<Check> checks, Check check) => checks.Index().First(item => item.Item == check).Index;

    private static Check Make(
        string id, SetUp setUp, string title, (string Part, string Place) red, (string Part, string Place) black, string unit, double low, double high, string why) =>
        new(
            id, "resistance", setUp.Id, title, $"Measure from {red.Part}.{red.Place} to {black.Part}.{black.Place}.",
            [new CheckPoint(red.Part, red.Place, ""), new CheckPoint(black.Part, black.Place, "")],
            unit, new ReadingInterval(low, high), why, 15);
}
