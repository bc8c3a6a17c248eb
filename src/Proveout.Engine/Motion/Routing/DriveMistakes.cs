using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Every plausible mistake with a machine's motor plugs, pulleys and tension; those with paths are in <see cref="RoutingMistakes"/>.</summary>
internal static class DriveMistakes
{
    // Pulleys of the same bore and pitch that lie in the same drawer (common practice).
    private static readonly (int Meant, int Taken)[] MixedUpTeeth = [(16, 20), (20, 16)];

    public static IEnumerable<DriveMistake> Of(MotionDesign motion)
    {
        var built = BuiltDrives.AsDesigned(motion);
        return RoutingMistakes.Of(motion).Concat(Plugs(built)).Concat(Coils(built)).Concat(Teeth(built)).Concat(SlackBelts(built));
    }

    private static IEnumerable<DriveMistake> Plugs(BuiltDrives built) =>
        from one in built.Outputs.Index()
        from two in built.Outputs.Skip(one.Index + 1)
        select new DriveMistake(
            DriveMistakeKind.PlugsExchanged,
            $"plugs-exchanged:{one.Item.Motor}:{two.Motor}",
            $"The plugs of {one.Item.Motor} and {two.Motor} are exchanged.",
            [one.Item.Motor, two.Motor],
            built with
            {
                Outputs = [.. built.Outputs.Select(plug => plug == one.Item ? plug with { Motor = two.Motor } : plug == two ? plug with { Motor = one.Item.Motor } : plug)],
            });

    private static IEnumerable<DriveMistake> Coils(BuiltDrives built) => built.Outputs.Select(reversed => new DriveMistake(
        DriveMistakeKind.CoilReversed,
        $"coil-reversed:{reversed.Motor}",
        $"One coil of {reversed.Motor} is reversed.",
        [reversed.Motor],
        built with { Outputs = [.. built.Outputs.Select(plug => plug == reversed ? plug with { Sign = -1 } : plug)] }));

    private static IEnumerable<DriveMistake> Teeth(BuiltDrives built) =>
        from pulley in built.Motion.Pulleys
        where pulley.Kind is PulleyKind.Toothed
        from pair in MixedUpTeeth
        where pair.Meant == pulley.Teeth
        select new DriveMistake(
            DriveMistakeKind.WrongTeeth,
            $"wrong-teeth:{pulley.Name}",
            $"{pulley.Name} has {pair.Taken} teeth instead of {pair.Meant}.",
            [pulley.Name],
            built with
            {
                Motion = built.Motion with { Pulleys = [.. built.Motion.Pulleys.Select(other => other == pulley ? pulley with { Teeth = pair.Taken } : other)] },
            });

    private static IEnumerable<DriveMistake> SlackBelts(BuiltDrives built) => built.Motion.Belts.Select(belt => new DriveMistake(
        DriveMistakeKind.Slack, $"slack-belt:{belt.Name}", $"The belt {belt.Name} has no tension.", [belt.Name], built with { Slack = belt.Name }));
}
