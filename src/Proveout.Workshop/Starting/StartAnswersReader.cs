using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads the answers of the guided start, and says all that is wrong with them in one go.</summary>
internal static class StartAnswersReader
{
    private const int LongestName = 80;

    public static Outcome<StartAnswers> Read(IReadOnlyDictionary<string, string> typed)
    {
        var figures = new TypedFigures(typed);
        var problems = new List<Diagnostic>();
        var name = typed.GetValueOrDefault(StartQuestions.Name, "").Trim();
        if (PlainNames.Of(name).Length == 0 || name.Length > LongestName || name.Any(char.IsControl))
            problems.Add(new("no-name", new SourcePlace("Name", 0, 0), "The machine has no name that a file can have.", $"Call it something of letters and digits, {LongestName} of them at most."));
        string Chosen(ChoiceField field) => Choose(field, typed, problems);
        int Whole(FigureField field) => (int)(figures.Read(field) ?? field.Least);
        var (plate, fans) = (Chosen(StartQuestions.Plate), Whole(StartQuestions.Fans));
        var answers = new StartAnswers
        {
            Name = name,
            MainsVolts = Chosen(StartQuestions.Mains) is var mains && mains == "none" ? 0 : int.Parse(mains, CultureInfo.InvariantCulture),
            Earthing = Chosen(StartQuestions.Earthing),
            HasSwitchedInlet = Chosen(StartQuestions.Inlet) == "switched",
            Supply = Chosen(StartQuestions.Supply),
            HasStop = Chosen(StartQuestions.Stop) == "yes",
            HasMetalFrame = Chosen(StartQuestions.Frame) == "metal",
            HasMetalEnclosure = Chosen(StartQuestions.Enclosure) == "metal",
            Board = StartBoard.All.First(board => board.Answer == Chosen(StartQuestions.Board)),
            Motors = Whole(StartQuestions.Motors),
            Axes = Whole(StartQuestions.Axes),
            Plate = plate,
            PlateWatts = figures.Read(StartQuestions.PlateWatts) ?? (plate == "mains" ? 400 : 100),
            HotEnds = Whole(StartQuestions.HotEnds),
            HotEndWatts = figures.Read(StartQuestions.HotEndWatts) ?? 0,
            Sensor = Chosen(StartQuestions.Sensor),
            Valves = Whole(StartQuestions.Valves),
            HasSpindle = Chosen(StartQuestions.Spindle) == "socket",
            Fans = fans,
            // Outputs for fans that come later stand at the voltage of the machine.
            FanVolts = Chosen(StartQuestions.FanVolts) is var volts && fans == 0 ? 24 : int.Parse(volts, CultureInfo.InvariantCulture),
        };
        problems.AddRange(Unknown(typed));
        problems.AddRange(figures.Problems);
        // Answers that could not be read would only contradict others by chance.
        if (problems.All(problem => problem.Rule == "no-name"))
            problems.AddRange(StartContradictions.In(answers, Chosen(StartQuestions.HotEndVolts)));
        return problems.Count > 0 ? Outcome.Refused<StartAnswers>(problems) : Outcome.Of(answers);
    }

    private static string Choose(ChoiceField field, IReadOnlyDictionary<string, string> typed, List<Diagnostic> problems)
    {
        var text = typed.GetValueOrDefault(field.Name, "").Trim();
        if (text.Length == 0 || field.Choices.Any(choice => choice.Answer == text))
            return text.Length == 0 ? field.Default : text;
        var problem = new Diagnostic(
            "no-such-answer", new SourcePlace(field.Label, 0, 0), $"`{text}` is none of the answers.", $"Choose one of {string.Join(", ", field.Choices.Select(choice => choice.Answer))}.");
        if (!problems.Contains(problem))
            problems.Add(problem);
        return field.Default;
    }

    private static IEnumerable<Diagnostic> Unknown(IReadOnlyDictionary<string, string> typed) =>
        from name in typed.Keys
        where !StartQuestions.Names.Contains(name)
        select new Diagnostic("no-such-question", new SourcePlace(name, 0, 0), $"`{name}` is no question of the start.", $"The questions are {string.Join(", ", StartQuestions.Names)}.");
}
