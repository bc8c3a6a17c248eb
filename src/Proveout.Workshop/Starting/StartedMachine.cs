using System.Globalization;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Makes a machine file with typical wiring of what a builder knows; nothing is kept.</summary>
public static class StartedMachine
{
    private const string Path = "machine.yaml";

    private static readonly string[] Supplies = ["150", "200", "350"];

    private static readonly EditedThing Head = new(EditedThing.Head, "name");

    /// <summary>The machine file, or every reason why there is none.</summary>
    /// <param name="typed">Answers by the names of <see cref="StartQuestions"/>; what is left out has the default of its question.</param>
    /// <param name="files">Reads machines by the catalogue.</param>
    public static Outcome<StartedFile> Of(IReadOnlyDictionary<string, string> typed, MachineFiles files)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(files);
        var read = StartAnswersReader.Read(typed);
        if (read.Value is not { } answers)
            return Outcome.Refused<StartedFile>(read.Diagnostics);
        if (files.Catalogue.Value is not { } catalogue)
            return Outcome.Refused<StartedFile>(files.Catalogue.Diagnostics);
        string[] supplies = !answers.HasMains ? ["external"] : answers.Supply == "fitting" ? Supplies : [answers.Supply];
        IReadOnlyList<Finding> findings = [];
        foreach (var supply in supplies)
        {
            var text = Written(answers, supply, catalogue);
            var machine = files.Read([text], Path).Value ?? throw new InvalidOperationException($"The guided start wrote no machine: {files.Read([text], Path).Diagnostics[0]}");
            findings = Serious(machine.Design);
            if (findings.Count == 0)
                return Outcome.Of(new StartedFile(answers.Name, text.Text, machine.Design, Guess.In([text])));
        }

        return Outcome.Refused<StartedFile>([.. Plainest(findings).Select(Refused)]);
    }

    /// <summary>What keeps a supply from being taken: an error, or too little of it.</summary>
    private static IReadOnlyList<Finding> Serious(MachineDesign design) =>
        [.. DesignReview.Of(design).Where(finding => finding.Severity == FindingSeverity.Error || finding is { Severity: FindingSeverity.Warning, Rule: "supply-budget" })];

    // A supply that is too small overloads terminals and fuses too; that says it best.
    private static IEnumerable<Finding> Plainest(IReadOnlyList<Finding> findings) =>
        findings.Any(finding => finding.Rule == "supply-budget") ? findings.Where(finding => finding.Rule == "supply-budget") : findings;

    private static Diagnostic Refused(Finding finding) =>
        new("answers-overload", new SourcePlace(finding.Rule, 0, 0), finding.Sentence, $"{finding.Fix} Fewer or weaker loads help too.");

    private static SourceText Written(StartAnswers answers, string supply, Catalogue catalogue)
    {
        var file = new StartingFile(catalogue);
        StartingRoutes.Write(file, answers);
        if (answers.HasMains)
            new StartingMains(file, answers).Write();
        var power = new StartingPower(file, answers, supply);
        power.Write();
        var stop = new StartingStop(file, answers, power);
        stop.Write();
        new StartingSpindle(file, answers, power, stop).Write();
        var plate = answers.HasPlate ? new StartingPlate(file, answers, power) : null;
        plate?.Write(answers.Board.PlateOutput ?? answers.Board.Heats[^1], stop.Plate);
        new StartingBoard(file, answers, power).Write(stop.Power, plate);
        var named = MachineText.Apply([new(Path, file.Text(Summary(answers)))], [new FieldEdit(Head, [], EditedValue.Of(answers.Name))]);
        return named.Value?[0] ?? throw new InvalidOperationException($"The guided start wrote no machine file: {named.Diagnostics[0]}");
    }

    private static string Summary(StartAnswers answers)
    {
        var plate = answers.HasPlate ? $"a {(answers.HasMainsPlate ? "mains" : "24 V")} plate" : "no plate";
        return $"{Count(answers.Motors, "motor")} on {Count(answers.Axes, "axis", "axes")}, {plate}, {Count(answers.HotEnds, "hot end")}, {Count(answers.Fans, "fan")}{(answers.Valves > 0 ? $", {Count(answers.Valves, "valve")}" : "")}{(answers.HasSpindle ? ", a socket for the spindle" : "")}. Begun with the guided start, so its wiring is typical and not yet checked against the machine.";
    }

    private static string Count(int count, string one, string many = "") =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many.Length > 0 ? many : one + "s")}");
}
