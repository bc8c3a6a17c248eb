namespace Proveout.Workshop;

/// <summary>The routes of a machine that is just begun: what keeps mains and extra-low voltage apart, and what moves.</summary>
internal static class StartingRoutes
{
    public const string Mains = "mains-duct";
    public const string Supply = "supply-duct";
    public const string Low = "low-duct";
    public const string Chain = "moving-chain";
    public const string PlateMains = "plate-mains";
    public const string PlateSensor = "plate-sensor";

    public const string ToHead = $"{Low}, {Chain}";

    public static void Write(StartingFile file, StartAnswers answers)
    {
        if (answers.HasMains)
            file.Route(Mains, "{kind: duct, note: \"Mains only.\"}");
        file.Route(Supply, "{kind: duct, note: \"24 V between supply, fuses, relay and controller.\"}");
        file.Route(Low, "{kind: duct, note: \"Outputs, signals and what goes out to motors, heaters and fans.\"}");
        file.Route(Chain, "{kind: chain, relief: both, note: \"From the part that stands still to the head; conductors made for flexing, held at both ends.\"}");
        if (answers.HasMainsPlate)
            file.Route(PlateMains, "{kind: channel, relief: both, note: \"To the plate, in a heat-proof sleeve; mains only.\"}");
        if (answers.HasPlate)
            file.Route(PlateSensor, "{kind: bundle, relief: both, note: \"Heat-proof sleeve of the plate's sensor, away from its heater leads.\"}");
    }
}
