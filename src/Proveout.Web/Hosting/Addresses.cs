using Microsoft.AspNetCore.Http;

namespace Proveout.Web.Hosting;

/// <summary>Every address of the bench, built in one place.</summary>
internal static class Addresses
{
    public const string Front = "/";

    /// <summary>Key of the query that names the form that was sent.</summary>
    public const string FormKey = "form";

    public const string Health = "/health";

    public const string HealthLive = "/health/live";

    public const string HealthReady = "/health/ready";

    public const string Metrics = "/metrics";

    public const string Offline = "/offline";

    public const string Worker = "/worker.js";

    public const string Manifest = "/manifest.webmanifest";

    public const string Heard = "/heard";

    public const string Stopwatch = "/stopwatch";

    public const string Tension = "/tension";

    public const string Motor = "/motor";

    public const string Describe = "/describe";

    public const string Frame = "/frame";

    public const string Level = "/level";

    public const string Piece = "/piece";

    public const string Resonance = "/resonance";

    public const string Budget = "/budget";

    public const string SignIn = "/sign-in";

    public const string Join = "/join";

    public const string SignOut = "/sign-out";

    public const string Devices = "/devices";

    public const string SecondFactor = "/second-factor";

    /// <summary>
    /// Where a form with a file goes. It says in its query which form it is, because what is too large or cut off is not read at all; the fragment brings its
    /// refusal into sight, scripts or not.
    /// </summary>
    public static string Form(string page, string form) => $"{page}?{FormKey}={form}#problems-{form}";

    /// <summary>The sign-in, which then goes on to the page that was asked for.</summary>
    public static string SignInFor(HttpRequest request) =>
        request.Path == Front ? SignIn : $"{SignIn}?to={Uri.EscapeDataString(request.Path.ToUriComponent() + request.QueryString.ToUriComponent())}";

    /// <summary>An address of this bench as it is, or the front for any other, so that nobody is sent elsewhere by a link.</summary>
    public static string Own(string? address) =>
        address is ['/', ..] && !address.StartsWith("//", StringComparison.Ordinal) && !address.Any(letter => letter is '\\' || char.IsControl(letter)) ? address : Front;

    public static string SignOff(string buildId) => $"{Record(buildId)}/sign-off";

    public static string Build(string buildId) => $"/builds/{Uri.EscapeDataString(buildId)}";

    public static string Checks(string buildId) => $"{Build(buildId)}/checks";

    public static string Check(string buildId, string checkId) => $"{Checks(buildId)}/{Uri.EscapeDataString(checkId)}";

    public static string Parts(string buildId) => $"{Build(buildId)}/parts";

    public static string Record(string buildId) => $"{Build(buildId)}/record";

    public static string Report(string buildId) => $"{Build(buildId)}/report.pdf";

    public static string BuildBook(string buildId) => $"{Build(buildId)}/book";

    public static string Book(string machineId) => $"{Machine(machineId)}/book";

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

    public static string HandLog(string machineId) => $"{HeatLog(machineId)}/by-hand";

    public static string HeatLog(string machineId) => $"{Heat(machineId)}/log";

    public static string Edit(string machineId, string page = "") => $"{Machine(machineId)}/edit{(page.Length > 0 ? "/" : "")}{page}";

    public static string EditRow(string machineId, string section, string row) => $"{Edit(machineId, section)}?row={Uri.EscapeDataString(row)}#form";

    public static string EditNew(string machineId, string section, string from = "", string to = "") =>
        $"{Edit(machineId, section)}?new=1{(from.Length > 0 ? $"&from={Uri.EscapeDataString(from)}" : "")}{(to.Length > 0 ? $"&to={Uri.EscapeDataString(to)}" : "")}#form";

    public static string EditFile(string machineId, string file, int draft = 0) =>
        $"{Edit(machineId, "file")}?name={Uri.EscapeDataString(file)}{(draft > 0 ? FormattableString.Invariant($"&draft={draft}") : "")}";

    public static string EditDraw(string machineId, string part = "", string from = "") =>
        $"{Edit(machineId, "draw")}?part={Uri.EscapeDataString(part)}&from={Uri.EscapeDataString(from)}#terminals";

    public static string Guesses(string machineId) => $"{Machine(machineId)}/guesses";

    /// <summary>The front page with a machine chosen for a build.</summary>
    public static string StartOf(string machineId) => $"{Front}?machine={Uri.EscapeDataString(machineId)}#start-title";

    public static string Review(string machineId) => $"{Machine(machineId)}/review";

    public static string Paper(string machineId) => $"{Machine(machineId)}/paper";

    public static string PaperList(string machineId, string list) => $"{Paper(machineId)}?list={list}";

    public static string Drawings(string machineId) => $"{Machine(machineId)}/drawings";

    public static string Drawing(string machineId, string name) => $"{Drawings(machineId)}/{Uri.EscapeDataString(name)}.svg";

    public static string WireDrawing(string machineId, string conductor, int sheet) => $"{Wire(machineId, conductor)}/{sheet}.svg";

    public static string Wire(string machineId, string conductor) => $"{Machine(machineId)}/wires/{Uri.EscapeDataString(conductor)}";

    public static string Energise(string machineId) => $"{Machine(machineId)}/energise";

    public static string Ask(string machineId) => $"{Machine(machineId)}/ask";

    public static string Walk(string machineId) => $"{Machine(machineId)}/walk";

    public static string Plan(string machineId) => $"{Machine(machineId)}/plan";

    public static string Threes(string machineId) => $"{Plan(machineId)}/threes";
}
