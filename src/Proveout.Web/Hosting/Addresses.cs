namespace Proveout.Web.Hosting;

/// <summary>Every address of the bench, built in one place.</summary>
internal static class Addresses
{
    public const string Front = "/";

    public const string Tension = "/tension";

    public const string Motor = "/motor";

    public const string Frame = "/frame";

    public const string Level = "/level";

    public const string Piece = "/piece";

    public const string Resonance = "/resonance";

    public const string Budget = "/budget";

    public static string Build(string buildId) => $"/builds/{Uri.EscapeDataString(buildId)}";

    public static string Checks(string buildId) => $"{Build(buildId)}/checks";

    public static string Check(string buildId, string checkId) => $"{Checks(buildId)}/{Uri.EscapeDataString(checkId)}";

    public static string Parts(string buildId) => $"{Build(buildId)}/parts";

    public static string Record(string buildId) => $"{Build(buildId)}/record";

    public static string Report(string buildId) => $"{Build(buildId)}/report.pdf";

    public static string Events(string buildId, long afterSequence) => $"{Build(buildId)}/events?after={afterSequence}";

    public static string Photo(string buildId, string sha256) => $"{Build(buildId)}/photos/{Uri.EscapeDataString(sha256)}";

    public static string DataFile(string buildId, string sha256) => $"{Build(buildId)}/files/{Uri.EscapeDataString(sha256)}";

    public static string Machine(string machineId) => $"/machines/{Uri.EscapeDataString(machineId)}";

    public static string Builds(string machineId) => $"{Machine(machineId)}/builds";

    public static string Belts(string machineId) => $"{Machine(machineId)}/belts";

    public static string Air(string machineId) => $"{Machine(machineId)}/air";

    public static string BeltFilm(string machineId, string plane, string axis) => $"{Belts(machineId)}/{Uri.EscapeDataString(plane)}/{Uri.EscapeDataString(axis)}.svg";

    public static string Heat(string machineId) => $"{Machine(machineId)}/heat";

    public static string Settings(string machineId) => $"{Machine(machineId)}/settings";

    public static string BuildSettings(string buildId) => $"{Build(buildId)}/settings";

    public static string Acceptance(string machineId) => $"{Machine(machineId)}/acceptance";

    public static string BuildAcceptance(string buildId) => $"{Build(buildId)}/acceptance";

    public static string Stages(string machineId) => $"{Machine(machineId)}/stages";

    public static string HeatLog(string machineId) => $"{Heat(machineId)}/log";

    public static string Review(string machineId) => $"{Machine(machineId)}/review";

    public static string Paper(string machineId) => $"{Machine(machineId)}/paper";

    public static string Drawings(string machineId) => $"{Machine(machineId)}/drawings";

    public static string Drawing(string machineId, string name) => $"{Drawings(machineId)}/{Uri.EscapeDataString(name)}.svg";

    public static string WireDrawing(string machineId, string conductor, int sheet) => $"{Wire(machineId, conductor)}/{sheet}.svg";

    public static string Wire(string machineId, string conductor) => $"{Machine(machineId)}/wires/{Uri.EscapeDataString(conductor)}";

    public static string Energise(string machineId) => $"{Machine(machineId)}/energise";

    public static string Ask(string machineId) => $"{Machine(machineId)}/ask";

    public static string Walk(string machineId) => $"{Machine(machineId)}/walk";

    public static string Plan(string machineId) => $"{Machine(machineId)}/plan";
}
