using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Publish.Drawings;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>Shows machines of a shelf as designed.</summary>
public sealed class DesignDesk(MachineShelf shelf, PlanDesk desk) : IDesignDesk
{
    // Every revision that somebody looks at has its own.
    private const int Most = 40;

    private readonly RecentlyUsed<string, HeatView> _heat = new(Most);
    private readonly RecentlyUsed<string, StagesView?> _stages = new(Most);
    private readonly RecentlyUsed<string, AirView> _air = new(Most);
    private readonly RecentlyUsed<string, BeltsView?> _belts = new(Most);
    private readonly RecentlyUsed<string, IReadOnlyList<DrawingSheet>> _sheets = new(Most);

    /// <inheritdoc/>
    public ReviewView? Review(string machineId) =>
        shelf.Find(machineId) is { } machine ? new(machine.Summary, DesignReview.Of(machine.Design), ReviewRules.All.Count) : null;

    /// <inheritdoc/>
    public HeatView? Heat(string machineId) => shelf.Find(machineId) is { } machine
        ? _heat.GetOrMake(machine.Fingerprint, () => HeatPrediction.Of(machine.Summary, machine.Design))
        : null;

    /// <inheritdoc/>
    public Outcome<HeatLogView>? HeatLog(string machineId, HeatLogRequest request) =>
        shelf.Find(machineId) is { } machine ? HeatLogJudgement.Of(request, [.. machine.Design.Heated]) : null;

    /// <inheritdoc/>
    public AirView? Air(string machineId) => shelf.Find(machineId) is { } machine
        ? _air.GetOrMake(machine.Fingerprint, () => AirPrediction.Of(machine.Summary, machine.Design))
        : null;

    /// <inheritdoc/>
    public BeltsPageView? Belts(string machineId, IReadOnlyDictionary<string, double> asked) => shelf.Find(machineId) is not { } machine ? null
        : _belts.GetOrMake(machine.Fingerprint, () => BeltProof.Of(machine.Summary, machine.Design)) is { } view
            ? new(machine.Summary, view, BeltDrawings.Of(machine.Design.Motion, asked), BeltDrawings.Places(machine.Design.Motion, asked))
            {
                Seen = BeltProof.Explain(view, asked),
                Films = [.. from plane in machine.Design.Motion.Belts.Select(belt => BeltDrawings.PlaneOf(machine.Design.Motion, belt)).Distinct() from axis in BeltDrawings.Movers(machine.Design.Motion, plane) select (plane, axis)],
            }
            : new(machine.Summary, null, [], []);

    /// <inheritdoc/>
    public StagesPageView? Stages(string machineId) => shelf.Find(machineId) is { } machine
        ? new(machine.Summary, _stages.GetOrMake(machine.Fingerprint, () => StageViews.Of(machine, desk.Of)))
        : null;

    /// <inheritdoc/>
    public string? BeltFilm(string machineId, string plane, string axis) =>
        shelf.Find(machineId) is { } machine && BeltProof.Moves(machine.Design.Motion) ? BeltDrawings.Film(machine.Design.Motion, plane, axis) : null;

    /// <inheritdoc/>
    public PaperView? Paper(string machineId) =>
        shelf.Find(machineId) is { } machine && BookOf(machine, "") is var book
            ? new(machine.Summary, book.Cautions, [.. book.Schedules.Select(TableOf)])
            : null;

    /// <inheritdoc/>
    public PaperFile? PaperFile(string machineId, string name, string pages) =>
        shelf.Find(machineId) is { } machine ? PaperFiles.Of(BookOf(machine, pages)).FirstOrDefault(file => file.Name == name) : null;

    /// <inheritdoc/>
    public WireView? Wire(string machineId, string conductor) =>
        shelf.Find(machineId) is { } machine && machine.Design.Conductors.FirstOrDefault(candidate => candidate.Id == conductor) is { } found
            ? Of(machine, found)
            : null;

    /// <inheritdoc/>
    public DrawingsView? Drawings(string machineId) =>
        shelf.Find(machineId) is { } machine ? new(machine.Summary, [.. SheetsOf(machine).Select(sheet => (sheet.Name, sheet.Title))]) : null;

    /// <inheritdoc/>
    public string? Drawing(string machineId, string name) =>
        shelf.Find(machineId) is { } machine ? SheetsOf(machine).FirstOrDefault(sheet => sheet.Name == name)?.Svg : null;

    /// <inheritdoc/>
    public IReadOnlyList<string> WireDrawings(string machineId, string conductor) =>
        shelf.Find(machineId) is { } machine ? [.. MachineDrawings.OfWire(machine.Design, conductor).Select(sheet => sheet.Svg)] : [];

    private IReadOnlyList<DrawingSheet> SheetsOf(LoadedMachine machine) =>
        _sheets.GetOrMake(machine.Fingerprint, () => MachineDrawings.Of(machine.Design));

    private ScheduleBook BookOf(LoadedMachine machine, string pages) => ScheduleBooks.Of(desk.Of(machine), ScheduleBooks.UsualReel, pages);

    private static PaperTable TableOf(Schedule schedule) => new(
        schedule.Id, schedule.Title, schedule.Purpose, [.. schedule.Columns.Select(column => column.Heading)], schedule.Rows, schedule.Total);

    private static WireView Of(LoadedMachine machine, Conductor conductor)
    {
        var design = machine.Design;
        var carries = new WiringContext(WiringNetworkBuilder.Build(design)).ClassOf(conductor);
        return new(
            machine.Summary,
            conductor,
            EndOf(design, conductor, conductor.From),
            EndOf(design, conductor, conductor.To),
            MachineLayout.Of(design).WayOf(conductor.Id),
            WordsOf(carries),
            carries >= NetClass.Neutral,
            MachineDrawings.OfWire(design, conductor.Id).Count);
    }

    private static WireEnd EndOf(MachineDesign design, Conductor conductor, TerminalReference terminal) => new(
        terminal,
        design.FindPart(terminal.Part)!,
        Terminations.At(design, conductor, terminal),
        [.. design.Conductors.Where(other => other.Id != conductor.Id && (other.From == terminal || other.To == terminal)).Select(other => other.Id)]);

    private static string WordsOf(NetClass carries) => carries switch
    {
        NetClass.ProtectiveEarth => "protective earth",
        NetClass.Line => "mains, line",
        NetClass.Neutral => "mains, neutral",
        NetClass.Positive => "positive pole of an extra-low-voltage supply",
        NetClass.ZeroVolt => "0 V of an extra-low-voltage supply",
        _ => "a signal or an output",
    };
}
