using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What there is to see of a machine as designed, before and while it is built: review, paper to work from, single wires.</summary>
public interface IDesignDesk
{
    /// <summary>What the review of a design finds; null when there is no such machine.</summary>
    ReviewView? Review(string machineId);

    /// <summary>What everything that a machine heats will do; null when there is no such machine.</summary>
    HeatView? Heat(string machineId);

    /// <summary>What a log of one of its heaters says, or why it cannot be used; null when there is no such machine.</summary>
    Outcome<HeatLogView>? HeatLog(string machineId, HeatLogRequest request);

    /// <summary>What is known of the air in a machine's bays; null when there is no such machine.</summary>
    AirView? Air(string machineId);

    /// <summary>What is known of a machine's belts before they are fitted; without belts when the file has none; null when there is no such machine.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="asked">Where axes stand, in mm, by their names; and what was seen or read, by the identifiers of checks.</param>
    BeltsPageView? Belts(string machineId, IReadOnlyDictionary<string, double> asked);

    /// <summary>The belts of a plane as an axis moves, as an SVG document; null when there is no such machine, plane or axis.</summary>
    string? BeltFilm(string machineId, string plane, string axis);

    /// <summary>Which checks a build in stages needs at each of them; without stages when nothing comes later; null when there is no such machine.</summary>
    StagesPageView? Stages(string machineId);

    /// <summary>The schedules of a machine; null when there is no such machine.</summary>
    PaperView? Paper(string machineId);

    /// <summary>A file of schedules or labels; null when there is none of that name.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="name">Name of the file, such as <c>wire-list.csv</c>.</param>
    /// <param name="pages">Address of the machine's pages, which the labels' codes point at.</param>
    PaperFile? PaperFile(string machineId, string name, string pages);

    /// <summary>One conductor from end to end; null when there is no such machine or conductor.</summary>
    WireView? Wire(string machineId, string conductor);

    /// <summary>The drawings of a machine; null when there is no such machine.</summary>
    DrawingsView? Drawings(string machineId);

    /// <summary>A sheet as an SVG document; null when there is none of that name.</summary>
    string? Drawing(string machineId, string name);

    /// <summary>The sheets that show one conductor, as SVG documents; none when there is no such conductor.</summary>
    IReadOnlyList<string> WireDrawings(string machineId, string conductor);
}
