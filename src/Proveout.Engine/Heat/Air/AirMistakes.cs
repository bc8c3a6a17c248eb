using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>Every plausible mistake with the air of a bay.</summary>
internal static class AirMistakes
{
    // A hole with sharp edges between two rooms, as for openings.
    private static readonly Between LidCoefficient = new(2.4, 3.2);

    // Air that comes in beside where it leaves may pass the parts by: of what flows, this share carries no heat away; from memory.
    private static readonly Between PassesBy = new(0, 0.6);

    // Film and walls leave gaps.
    private static readonly Between Shut = new(0.002, 0.02);

    public static IEnumerable<AirMistake> Of(BayAir bay)
    {
        foreach (var opening in bay.Openings)
            foreach (var mistake in (IEnumerable<AirMistake>)[.. OfFan(bay, opening), .. OfWay(bay, opening)])
                yield return mistake;
        foreach (var mistake in OfBay(bay))
            yield return mistake;
    }

    private static IEnumerable<AirMistake> OfFan(BayAir bay, AirOpening opening)
    {
        if (opening.Fan is not { } fan)
            yield break;
        var (name, at) = (fan.Part.Length > 0 ? fan.Part : $"the fan in {opening.Name}", $"in {opening.Name}");
        var opposes = bay.Openings.Any(other => other.Fan is { } with && !ReferenceEquals(other, opening) && with.BlowsOut == fan.BlowsOut);
        var reversed = Make("fan-reversed", $"{Capital.Of(name)} {at} is turned round: it blows {(fan.BlowsOut ? "in" : "out")}.", 0.04, "the arrows on its frame; its label is on the side that the air leaves", fan with { BlowsOut = !fan.BlowsOut });
        yield return opposes ? reversed with { Left = reversed.Left with { Returned = PassesBy } } : reversed;
        yield return Make("fan-open", $"{Capital.Of(name)} {at} stands still: its lead is open, or its output is off.", 0.03, "look whether it turns", fan with { Stands = true, CurrentShare = new(0, 0.02) });
        yield return Make("fan-jammed", $"{Capital.Of(name)} {at} stands still: a wire or a screw jams its blades.", 0.02, "look whether it turns; it is warm, and twitches", fan with { Stands = true, CurrentShare = new(0, 3) });
        yield return Make(
            "fan-slow", $"{Capital.Of(name)} {at} is one for twice the voltage, or its output is set to half: it runs slowly.", 0.03, "its label; its sound",
            fan with { Speed = fan.Speed.Times(new Between(0.4, 0.65)), CurrentShare = new(0.15, 0.55) });
        yield return Make(
            "fan-fast", $"{Capital.Of(name)} {at} is one for half the voltage: it runs too fast.", 0.02, "its label; its sound",
            fan with { Speed = fan.Speed.Times(new Between(1.3, 2.1)), CurrentShare = new(1.6, 4.5) }) with
        {
            BurnsFan = true,
        };

        AirMistake Make(string kind, string sentence, double prior, string other, OpeningFan left) =>
            new($"{kind}:{opening.Name}", kind, sentence, prior, other, [bay.Name, opening.Name], With(bay, opening, opening with { Fan = left }));
    }

    private static IEnumerable<AirMistake> OfWay(BayAir bay, AirOpening opening)
    {
        yield return new(
            $"opening-shut:{opening.Name}", "opening-shut", $"The way through {opening.Name} is shut: film left on, a bundle before it, a wall close behind it.", 0.03, "look at it from both sides", [bay.Name, opening.Name],
            With(bay, opening, opening with { SquareMetres = opening.SquareMetres.Times(Shut) }));
        if (opening.Filter is { } filter)
            yield return new(
                $"filter-clogged:{opening.Name}", "filter-clogged", $"The filter in {opening.Name} is clogged, wet, or doubled.", 0.03, "hold it against the light", [bay.Name, opening.Name],
                With(bay, opening, opening with { Filter = filter with { Pascals = new(2 * filter.LoadedPascals, 20 * filter.LoadedPascals) } }));
    }

    private static IEnumerable<AirMistake> OfBay(BayAir bay)
    {
        if (bay.Openings.Count > 1)
            yield return new(
                "air-returns", "air-returns", "The air that leaves is drawn in again: outlet and inlet lie side by side, or a wall turns it back.", 0.04, "a strip of paper or smoke between outlet and inlet", [bay.Name],
                bay with { Returned = new(0.4, 0.8) });
        yield return new(
            "lid-off", "lid-off", "The lid or door of the bay is off or ajar: air takes the short way.", 0.05, "look", [bay.Name],
            bay with { Returned = PassesBy, Openings = [.. bay.Openings, new AirOpening("the open lid", new Between(0.3, 1).Times(bay.Walls.WidthMetres * bay.Walls.HeightMetres), LidCoefficient)] })
        {
            BaresMains = bay.HoldsMains,
        };
    }

    private static BayAir With(BayAir bay, AirOpening opening, AirOpening changed) =>
        bay with { Openings = [.. bay.Openings.Select(other => ReferenceEquals(other, opening) ? changed : other)] };
}
