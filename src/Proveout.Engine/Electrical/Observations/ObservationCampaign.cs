using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>
/// A walk round the machine: what eye, tug, hand, label and log should find, place by place, and the mistakes that only they show.
/// </summary>
/// <remarks>
/// Its dictionary is like any other, so plan, coverage and diagnosis treat it alike. An answer is yes or no, 1 or 0, or the force that a joint held.
/// </remarks>
public sealed class ObservationCampaign
{
    private const double SecondsToWalk = 20;
    private const double SecondsToSwitchOn = 120;

    private readonly MachineDesign _design;
    private readonly List<PlacedObservation> _placed;
    private readonly List<(Fault Fault, int Check)> _mistakes = [];

    /// <summary>Prepares the walk of a machine.</summary>
    public ObservationCampaign(WiringContext context)
    {
        _design = context.Design;
        var sites = new ObservationSites(context);
        _placed = [.. ObservationRules.All.SelectMany(observation => PlacedObservation.Of(observation, sites)).OrderBy(placed => placed.Observation.IsLive)];
        foreach (var (index, placed) in _placed.Index())
            foreach (var fault in placed.Mistakes(context.Design))
                _mistakes.Add((fault, index));
        Faults = [.. _mistakes.Select(mistake => mistake.Fault)];
        SetUps = [.. _placed.GroupBy(placed => placed.SetUpId).Select(group => SetUpOf(group.First(), context.Design))];
        Checks = [.. SetUps.SelectMany(setUp => _placed.Where(placed => placed.SetUpId == setUp.Id)).Select(placed => placed.Check)];
    }

    /// <summary>Every observation, place by place.</summary>
    public IReadOnlyList<Check> Checks { get; }

    /// <summary>A set-up a place for what is done dead, then one for all that is done with the machine on.</summary>
    public IReadOnlyList<SetUp> SetUps { get; }

    /// <summary>Every mistake that only an observation shows.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>What every observation finds under every mistake.</summary>
    public FaultDictionary Run()
    {
        var indexOf = Checks.Index().ToDictionary(item => item.Item.Id, item => item.Index, StringComparer.Ordinal);
        return new FaultDictionary(
            SetUps,
            Checks,
            Faults,
            [.. _mistakes.Select(mistake => new FaultResponse([indexOf[_placed[mistake.Check].Check.Id]], [_placed[mistake.Check].Wrong]))]);
    }

    /// <summary>The observations that show a mistake in the wiring: those of its kind, at the places that it concerns.</summary>
    public IReadOnlyList<Check> ShowingOf(WiringFault fault)
    {
        var parts = fault.Fault.Subjects.SelectMany(PartsOf).ToHashSet(StringComparer.Ordinal);
        var routes = fault.Fault.Subjects
            .SelectMany(subject => _design.Conductors.Where(conductor => conductor.Id == subject).SelectMany(conductor => conductor.Route))
            .ToHashSet(StringComparer.Ordinal);
        return
        [
            .. from placed in _placed
               where placed.Observation.Shows.Contains(fault.Fault.Kind)
               where placed.Sites.Any(site => site.Route is { } route ? routes.Contains(route.Name) : site.Part is null || parts.Contains(site.Part.Designation))
               select placed.Check,
        ];
    }

    private IEnumerable<string> PartsOf(string subject) =>
        _design.FindPart(subject) is not null
            ? [subject]
            : _design.Conductors.Where(conductor => conductor.Id == subject).SelectMany(conductor => new[] { conductor.From.Part, conductor.To.Part });

    private static SetUp SetUpOf(PlacedObservation placed, MachineDesign design) => placed.Observation.IsLive
        ? new SetUp(
            placed.SetUpId,
            "With the machine on",
            ["Only after every dead check and the walk round have passed: covers on, one person at the switch, loads in the order of the plan."],
            [
                "The machine is on and can heat and move by itself. Keep hands out; one person stays at the stop.",
                design.Mains is null
                    ? "Stop and isolate before touching anything."
                    : "Mains is on. Isolate, lock off and prove dead before touching anything inside; local rules come first.",
            ],
            SecondsToSwitchOn)
        : new SetUp(
            placed.SetUpId,
            string.Create(CultureInfo.InvariantCulture, $"Walk round: {placed.Place}"),
            [$"Stand at: {placed.Place}. Take a light, a lens and the wire list."],
            ["The supply is unplugged or locked off and proved dead: this is done with the eye and the hand."],
            SecondsToWalk);
}
